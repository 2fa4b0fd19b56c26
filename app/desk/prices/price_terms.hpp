// What holds for a price list as a whole: its name, place and date, and on what terms it is sold.
#pragma once

#include <QWidget>
#include <functional>

#include "app/desk/prices/price_document.hpp"
#include "app/words/numbers.hpp"

class QFormLayout;
class QLabel;
class QLineEdit;

namespace loam::desk {

class PriceTerms : public QWidget {
    Q_OBJECT

public:
    PriceTerms(PriceDocument& document, words::Formatter format, QWidget* parent);

private:
    // Takes the line's text into the list, or says why it can't.
    using Take = std::function<QString(catalog::PriceList&, const QString&)>;
    using Show = std::function<QString(const catalog::PriceList&)>;

    void build_name_rows(QFormLayout& form);
    void build_sale_rows(QFormLayout& form);
    void line(QFormLayout& form, const QString& label, const char* name, const QString& help, const Show& show,
              const Take& take);
    void text_line(QFormLayout& form, const QString& label, const char* name, const QString& help,
                   std::string catalog::PriceList::*member);
    void price_line(QFormLayout& form, const QString& label, const char* name, const QString& help,
                    std::optional<Decimal> catalog::PriceList::*member);
    void refresh();

    PriceDocument& document_;
    words::Formatter format_;
    QLabel* problem_;
    std::vector<std::function<void()>> refreshers_;
};

} // namespace loam::desk
