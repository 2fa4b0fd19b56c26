#include "app/desk/start/equipment_search.hpp"

#include <QThread>
#include <utility>

namespace loam::desk {

EquipmentSearch::EquipmentSearch(QObject* parent) : QObject(parent) {}

EquipmentSearch::~EquipmentSearch()
{
    stop();
}

void EquipmentSearch::start(const plan::Plan& plan, const SharedCatalog& catalog, std::chrono::year_month_day today,
                            const suggest::Asked& asked)
{
    stop();
    stop_ = std::stop_source();
    const int number = ++searches_;
    thread_ = QThread::create([this, number, plan, catalog, today, asked, token = stop_.get_token()] {
        auto result = suggest::suggest(plan, *catalog, today, asked, token);
        if (!result) {
            return; // given up
        }
        auto shared = std::make_shared<const suggest::Result>(std::move(*result));
        QMetaObject::invokeMethod(
            this,
            [this, number, shared] {
                if (number == searches_ && thread_ != nullptr) {
                    thread_->wait();
                    delete std::exchange(thread_, nullptr);
                    emit found(shared);
                }
            },
            Qt::QueuedConnection);
    });
    thread_->setObjectName(QStringLiteral("equipment"));
    thread_->start(QThread::LowPriority);
}

void EquipmentSearch::stop()
{
    if (thread_ == nullptr) {
        return;
    }
    ++searches_; // what is on its way is not wanted any more
    stop_.request_stop();
    thread_->wait(); // the search looks at the token every few milliseconds
    delete std::exchange(thread_, nullptr);
}

} // namespace loam::desk
