// Looks for equipment on a thread of its own.
#pragma once

#include <QObject>
#include <memory>
#include <stop_token>

#include "app/desk/document/runner.hpp"
#include "core/suggest/suggest.hpp"

class QThread;

namespace loam::desk {

using SharedSuggestions = std::shared_ptr<const suggest::Result>;

class EquipmentSearch : public QObject {
    Q_OBJECT

public:
    explicit EquipmentSearch(QObject* parent = nullptr);
    ~EquipmentSearch() override;

    // An older search is given up.
    void start(const plan::Plan& plan, const SharedCatalog& catalog, std::chrono::year_month_day today,
               const suggest::Asked& asked);
    void stop(); // and nothing is delivered any more
    bool searching() const { return thread_ != nullptr; }

signals:
    void found(const loam::desk::SharedSuggestions& result);

private:
    QThread* thread_ = nullptr;
    std::stop_source stop_;
    int searches_ = 0;
};

} // namespace loam::desk
