// What a list of adopters would come to, row by row, read beside the window's own work.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>
#include <thread>
#include <vector>

#include "app/batch/adopter.hpp"
#include "app/desk/document/runner.hpp"

namespace loam::desk {

struct Preview {
    struct Row {
        std::size_t number = 0;
        QString name;
        QStringList problems; // “column: reason”
        QString changes;      // “column: value”, of the cells that say anything
    };
    std::vector<Row> rows;
    QStringList warnings;
    QStringList errors; // not empty: there are no rows
    std::size_t failing() const;
};
using SharedPreview = std::shared_ptr<const Preview>;

class AdopterPreview : public QObject {
    Q_OBJECT

public:
    AdopterPreview(plan::Plan plan, SharedCatalog catalog, QObject* parent);
    ~AdopterPreview() override;

    // The answer to the last call comes by ready(); earlier ones are dropped.
    void read(const QString& path);

signals:
    void ready(const loam::desk::SharedPreview& preview);

private:
    const plan::Plan plan_;
    SharedCatalog catalog_;
    int asked_ = 0;
    std::jthread reader_;
};

} // namespace loam::desk
