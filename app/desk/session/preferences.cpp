#include "app/desk/session/preferences.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

#include "app/desk/session/price_choice.hpp"
#include "app/desk/session/settings.hpp"
#include "app/words/language.hpp"

namespace loam::desk {

namespace {

using Options = std::vector<std::pair<QString, QVariant>>;

// A row to choose from; `take` gets what was chosen.
template <class Take> QComboBox* add_choice(QFormLayout& form, const QString& label, const char* name,
                                            const Options& options, const QVariant& now, Take take)
{
    auto* box = new QComboBox;
    box->setObjectName(QLatin1String(name));
    box->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    for (const auto& [text, value] : options) {
        box->addItem(text, value);
    }
    box->setCurrentIndex(std::max(0, box->findData(now)));
    QObject::connect(box, &QComboBox::activated, box, [box, take](int) { take(box->currentData()); });
    form.addRow(label, box);
    return box;
}

Options language_options()
{
    Options options{{Preferences::tr("As the desktop"), QString()}};
    for (const words::Language& each : words::languages()) {
        options.emplace_back(each.name, each.code);
    }
    return options;
}

QLabel* note(const QString& text)
{
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum); // or it wraps far from the edge
    return label;
}

} // namespace

Preferences::Preferences(Settings& settings, const PriceChoice& prices, QWidget* parent)
    : QDialog(parent), settings_(settings)
{
    setObjectName(QStringLiteral("preferences"));
    setWindowTitle(tr("Preferences"));
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    add_language(*form);
    add_choices(*form);
    add_prices(*form, prices);
    add_printed(*form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addStretch(1);
    column->addWidget(buttons);
    constexpr int wide = 540; // a note of two lines is taller than the hint of a single one
    resize(wide, std::max(sizeHint().height(), column->totalHeightForWidth(wide)));
}

void Preferences::add_language(QFormLayout& form)
{
    const QString spoken = settings_.language();
    QLabel* later = note(tr("The language changes when Loamstead is next started."));
    later->setObjectName(QStringLiteral("languageNote"));
    auto* again = new QPushButton(tr("Start it again no&w"));
    again->setObjectName(QStringLiteral("startAgain"));
    again->setAutoDefault(false);
    connect(again, &QPushButton::clicked, this, &Preferences::startAgainWanted);
    const auto offer = [later, again](bool offered) {
        later->setVisible(offered);
        again->setVisible(offered);
    };
    offer(false);
    add_choice(form, tr("&Language"), "preferLanguage", language_options(), settings_.chosen_language(),
               [this, spoken, offer](const QVariant& chosen) {
                   settings_.set_language(chosen.toString());
                   offer(settings_.language() != spoken);
               });
    form.addRow(QString(), later);
    form.addRow(QString(), again);
}

void Preferences::add_choices(QFormLayout& form)
{
    add_choice(form, tr("&Units"), "preferUnits",
               {{tr("Metric (cm, kg, °C)"), static_cast<int>(words::UnitSystem::metric)},
                {tr("US (in, lb, °F)"), static_cast<int>(words::UnitSystem::us)}},
               static_cast<int>(settings_.units()),
               [this](const QVariant& chosen) { settings_.set_units(static_cast<words::UnitSystem>(chosen.toInt())); });
    add_choice(form, tr("&Appearance"), "preferTheme",
               {{tr("As the desktop"), static_cast<int>(Theme::system)},
                {tr("Light"), static_cast<int>(Theme::light)},
                {tr("Dark"), static_cast<int>(Theme::dark)}},
               static_cast<int>(settings_.theme()),
               [this](const QVariant& chosen) { settings_.set_theme(static_cast<Theme>(chosen.toInt())); });
    add_choice(
        form, tr("&Paper"), "preferPaper",
        {{tr("A4"), static_cast<int>(sheets::Paper::a4)}, {tr("US Letter"), static_cast<int>(sheets::Paper::letter)}},
        static_cast<int>(settings_.paper()),
        [this](const QVariant& chosen) { settings_.set_paper(static_cast<sheets::Paper>(chosen.toInt())); });
}

void Preferences::add_prices(QFormLayout& form, const PriceChoice& prices)
{
    auto* lists = new QPushButton(tr("Price l&ists…"));
    lists->setObjectName(QStringLiteral("preferPrices"));
    lists->setAutoDefault(false);
    connect(lists, &QPushButton::clicked, this, &Preferences::priceListsWanted);
    const SharedCatalog catalog = prices.initial();
    form.addRow(tr("Currency"), note(tr("%1, from the price list in use: “%2”")
                                         .arg(QString::fromStdString(catalog->prices.currency),
                                              QString::fromStdString(catalog->prices.title))));
    form.addRow(QString(), lists);
}

void Preferences::add_printed(QFormLayout& form)
{
    auto* name = new QLineEdit(settings_.printed_by().name);
    name->setObjectName(QStringLiteral("printedName"));
    name->setPlaceholderText(tr("club, rescue or keeper; may stay empty"));
    auto* contact = new QPlainTextEdit(settings_.printed_by().contact);
    contact->setObjectName(QStringLiteral("printedContact"));
    contact->setPlaceholderText(tr("how the reader reaches you"));
    contact->setAccessibleName(tr("Contact on printed sheets"));
    contact->setTabChangesFocus(true);
    contact->setFixedHeight(3 * contact->fontMetrics().lineSpacing() + 2 * contact->frameWidth() + 8);
    const auto keep = [this, name, contact] { settings_.set_printed_by({name->text(), contact->toPlainText()}); };
    connect(name, &QLineEdit::textChanged, this, keep);
    connect(contact, &QPlainTextEdit::textChanged, this, keep);
    form.addRow(tr("&Name on sheets"), name);
    form.addRow(tr("&Contact"), contact);
}

} // namespace loam::desk
