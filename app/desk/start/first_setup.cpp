#include "app/desk/start/first_setup.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desk/editors/quantity_field.hpp"
#include "app/report/suggestions.hpp"
#include "core/assess/space.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

enum Step { animals_step, room_step, box_step, equipment_step, step_count };

constexpr int usual_size = -1;
constexpr int own_size = -2;

QLabel* wrapped(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QString size_words(const suggest::BoxSize& size, const words::Formatter& format)
{
    return FirstSetup::tr("%1 × %2, %3 high")
        .arg(format.value(size.length_m, Quantity::length), format.value(size.width_m, Quantity::length),
             format.value(size.height_m, Quantity::length));
}

} // namespace

FirstSetup::FirstSetup(SharedCatalog catalog, words::UnitSystem units, std::chrono::year_month_day today,
                       QWidget* parent)
    : QDialog(parent), catalog_(std::move(catalog)), format_(units, QLocale()), today_(today),
      steps_(new QStackedWidget(this)), title_(new QLabel(this))
{
    setObjectName(QStringLiteral("firstSetup"));
    setWindowTitle(tr("A first plan"));
    QFont bold = font();
    bold.setBold(true);
    title_->setFont(bold);
    steps_->addWidget(build_animals());
    steps_->addWidget(build_room());
    steps_->addWidget(build_box());
    steps_->addWidget(build_equipment());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    back_ = buttons->addButton(tr("&Back"), QDialogButtonBox::ActionRole);
    back_->setObjectName(QStringLiteral("firstBack"));
    next_ = buttons->addButton(tr("&Next"), QDialogButtonBox::ActionRole);
    next_->setObjectName(QStringLiteral("firstNext"));
    next_->setDefault(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(title_);
    column->addWidget(steps_, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(back_, &QPushButton::clicked, this, [this] { turn_to(steps_->currentIndex() - 1); });
    connect(next_, &QPushButton::clicked, this, &FirstSetup::next);
    connect(species_, &QComboBox::currentIndexChanged, this, &FirstSetup::refresh_next);
    connect(&search_, &EquipmentSearch::found, this, &FirstSetup::show_found);
    resize(620, 440);
    turn_to(animals_step);
}

QuantityField* FirstSetup::field(Quantity quantity, double min, double max, const char* name,
                                 std::optional<double>& value)
{
    auto* line = new QuantityField(quantity, {min, max}, true, this);
    line->setObjectName(QString::fromLatin1(name));
    line->setPlaceholderText(tr("not known"));
    line->show_value(value, format_);
    connect(line, &QuantityField::committed, this, [this, line, &value](std::optional<double> typed) {
        value = typed;
        line->show_value(value, format_);
        refresh_box();
    });
    connect(line, &QuantityField::problemChanged, line, &QWidget::setToolTip);
    return line;
}

QWidget* FirstSetup::build_animals()
{
    auto* page = new QWidget(this);
    auto* form = new QFormLayout(page);
    species_ = new QComboBox(page);
    species_->setObjectName(QStringLiteral("firstSpecies"));
    for (const catalog::Species& species : catalog_->species) {
        species_->addItem(QStringLiteral("%1 (%2)").arg(QString::fromStdString(species.common_name),
                                                        QString::fromStdString(species.scientific_name)),
                          QString::fromStdString(species.id));
    }
    species_->model()->sort(0);
    species_->setPlaceholderText(tr("not chosen yet"));
    species_->setCurrentIndex(-1); // none of them is anybody's usual animal
    count_ = new QSpinBox(page);
    count_->setObjectName(QStringLiteral("firstCount"));
    count_->setRange(1, 20);
    form->addRow(wrapped(tr("Who is to live in it? Everything else follows from that. One animal is a sound choice: "
                            "most of these species live alone."),
                         page));
    form->addRow(tr("&Species"), species_);
    form->addRow(tr("How &many"), count_);
    form->addRow(tr("&Length of each now"), field(Quantity::length, 0.02, 6.0, "firstLength", typed_.length_m));
    form->addRow(wrapped(tr("Length is of the shell for turtles and tortoises, from snout to vent for lizards and "
                            "frogs, and the whole animal for snakes. Leave it empty where you don't know it."),
                         page));
    return page;
}

QWidget* FirstSetup::build_room()
{
    auto* page = new QWidget(this);
    auto* form = new QFormLayout(page);
    const auto row = [&](const QString& label, const char* name, std::optional<double>& value) {
        form->addRow(label, field(Quantity::temperature, -20.0, 50.0, name, value));
    };
    form->addRow(wrapped(tr("How warm is the room? A thermometer left there for some days tells. What stays empty is "
                            "taken as a wide range, and the results are as wide."),
                         page));
    row(tr("Winter, by &day"), "firstWinterDay", typed_.room.winter.day_c);
    row(tr("Winter, by &night"), "firstWinterNight", typed_.room.winter.night_c);
    row(tr("Summer, by d&ay"), "firstSummerDay", typed_.room.summer.day_c);
    row(tr("Summer, by n&ight"), "firstSummerNight", typed_.room.summer.night_c);
    row(tr("In a &heat wave"), "firstHeatWave", typed_.room.heat_wave_c);
    return page;
}

QWidget* FirstSetup::build_box()
{
    auto* page = new QWidget(this);
    auto* form = new QFormLayout(page);
    size_ = new QComboBox(page);
    size_->setObjectName(QStringLiteral("firstSize"));
    size_->addItem(tr("the smallest usual size that is large enough"), usual_size);
    for (const suggest::BoxSize& size : suggest::box_sizes()) {
        size_->addItem(size_words(size, format_), size_->count() - 1);
    }
    size_->addItem(tr("a size of my own"), own_size);
    walls_ = new QComboBox(page);
    walls_->setObjectName(QStringLiteral("firstWalls"));
    for (const catalog::Material& material : catalog_->materials) {
        const auto serves = [&material](catalog::MaterialUse use) {
            return std::find(material.uses.begin(), material.uses.end(), use) != material.uses.end();
        };
        // What is sold to lie on a box is no box.
        if (serves(catalog::MaterialUse::panel) && !serves(catalog::MaterialUse::cover)) {
            walls_->addItem(QString::fromStdString(material.name), QString::fromStdString(material.id));
        }
    }
    walls_->setCurrentIndex(std::max(0, walls_->findData(QString::fromStdString(plan::Shell().walls))));
    own_size_ = new QWidget(page);
    auto* own = new QFormLayout(own_size_);
    own->setContentsMargins(0, 0, 0, 0);
    own->addRow(tr("&Length inside"), field(Quantity::length, 0.2, 6.0, "firstBoxLength", own_length_m_));
    own->addRow(tr("Wi&dth inside"), field(Quantity::length, 0.2, 3.0, "firstBoxWidth", own_width_m_));
    own->addRow(tr("&Height inside"), field(Quantity::length, 0.2, 3.0, "firstBoxHeight", own_height_m_));
    box_note_ = wrapped({}, page);
    box_note_->setObjectName(QStringLiteral("firstBoxNote"));
    form->addRow(
        wrapped(tr("What box is it to be? The floor has to be enough for the animals when they are grown."), page));
    form->addRow(tr("&Size"), size_);
    form->addRow(own_size_);
    form->addRow(tr("&Walls and base"), walls_);
    form->addRow(box_note_);
    connect(size_, &QComboBox::currentIndexChanged, this, &FirstSetup::refresh_box);
    return page;
}

QWidget* FirstSetup::build_equipment()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    search_note_ = wrapped({}, page);
    search_note_->setObjectName(QStringLiteral("firstNote"));
    busy_ = new QProgressBar(page);
    busy_->setRange(0, 0);
    busy_->setAccessibleName(tr("Looking for equipment"));
    choices_ = new QListWidget(page);
    choices_->setObjectName(QStringLiteral("firstChoices"));
    choices_->setAccessibleName(tr("What was found"));
    choices_->setWordWrap(true);
    choices_->setAlternatingRowColors(true);
    column->addWidget(search_note_);
    column->addWidget(busy_);
    column->addWidget(choices_, 1);
    return page;
}

suggest::FirstAnswers FirstSetup::answers() const
{
    suggest::FirstAnswers answers = typed_;
    answers.species = species_->currentData().toString().toStdString();
    answers.count = count_->value();
    answers.walls = walls_->currentData().toString().toStdString();
    answers.currency = catalog_->prices.currency;
    const catalog::Species* species = catalog_->find_species(answers.species);
    const QString name = species != nullptr ? QString::fromStdString(species->common_name) : QString();
    answers.title = tr("%1: first plan").arg(name).toStdString();
    answers.enclosure_name = name.toStdString();
    const int size = size_->currentData().toInt();
    if (size >= 0) {
        answers.box = suggest::box_sizes()[static_cast<std::size_t>(size)];
    } else if (size == own_size && typed_own_size()) {
        answers.box = suggest::BoxSize{*own_length_m_, *own_width_m_, *own_height_m_};
    }
    return answers;
}

std::optional<plan::Plan> FirstSetup::bare_plan() const
{
    return suggest::first_plan(answers(), *catalog_, today_);
}

bool FirstSetup::typed_own_size() const
{
    return own_length_m_ && own_width_m_ && own_height_m_;
}

// Whether the floor is enough is for the space rules to say, before anything is bought.
QString FirstSetup::size_note(const plan::Plan& plan, bool chosen_for_them) const
{
    const plan::Shell& shell = plan.enclosures.front().shell;
    const QString size = size_words({shell.length_m, shell.width_m, shell.height_m}, format_);
    const assess::Context context{plan, *catalog_, today_};
    switch (assess::assess_space(context, {plan.enclosures.front(), 0}).result.judgement.verdict) {
    case Verdict::fits:
    case Verdict::tight:
        return tr("%1: enough for them by every space rule of their sheet.").arg(size);
    case Verdict::not_known:
        return tr("%1: whether that is enough is not known, for no space rule applies.").arg(size);
    default:
        return chosen_for_them ? tr("No usual size is enough for them. The largest, %1, falls short too: they need a "
                                    "room or a pen of their own, or fewer animals.")
                                     .arg(size)
                               : tr("%1 is too small for them by the rules of their sheet.").arg(size);
    }
}

void FirstSetup::refresh_box()
{
    const int size = size_->currentData().toInt();
    own_size_->setVisible(size == own_size);
    const auto plan = bare_plan();
    box_note_->setText(plan && (size != own_size || typed_own_size()) ? size_note(*plan, size == usual_size)
                                                                      : QString());
}

void FirstSetup::turn_to(int step)
{
    search_.stop();
    steps_->setCurrentIndex(step);
    static const char* const titles[] = {QT_TR_NOOP("The animals"), QT_TR_NOOP("The room"), QT_TR_NOOP("The box"),
                                         QT_TR_NOOP("What heats and lights it")};
    title_->setText(tr("Step %1 of %2: %3").arg(step + 1).arg(int(step_count)).arg(tr(titles[step])));
    back_->setEnabled(step > animals_step);
    next_->setText(step == equipment_step ? tr("&Make this plan") : tr("&Next"));
    refresh_next();
    if (step == box_step) {
        refresh_box();
    }
    if (step == equipment_step) {
        search();
    }
    for (QWidget* part : steps_->currentWidget()->findChildren<QWidget*>()) {
        if ((part->focusPolicy() & Qt::TabFocus) != 0) {
            part->setFocus();
            break;
        }
    }
}

void FirstSetup::refresh_next()
{
    next_->setEnabled(steps_->currentIndex() != animals_step || species_->currentIndex() >= 0);
}

void FirstSetup::next()
{
    if (steps_->currentIndex() == equipment_step) {
        search_.stop();
        accept();
    } else {
        turn_to(steps_->currentIndex() + 1);
    }
}

void FirstSetup::search()
{
    found_.reset();
    choices_->clear();
    choices_->addItem(tr("Without lamps and heaters: I choose them myself"));
    choices_->setCurrentRow(0);
    const auto plan = bare_plan();
    busy_->setVisible(plan.has_value());
    if (plan) {
        search_note_->setText(tr("Looking for lamps and heaters that keep every place in its target, in winter and in "
                                 "summer. This takes some seconds; you need not wait for it."));
        suggest::Asked asked;
        asked.keep_box = true;
        search_.start(*plan, catalog_, today_, asked);
    }
}

void FirstSetup::show_found(const SharedSuggestions& result)
{
    found_ = result;
    busy_->hide();
    const auto& all = result->suggestions;
    const bool meets = std::any_of(all.begin(), all.end(), [](const suggest::Suggestion& one) { return one.meets; });
    search_note_->setText(all.empty() ? tr("Nothing was found: too little is known for a prediction.")
                          : meets ? tr("These keep every place in its target, by the likely figures. Prove them with "
                                       "thermometers before an animal moves in.")
                                  : tr("Nothing that was tried keeps every place in its target. These come nearest; "
                                       "the findings will say what is missing."));
    for (const suggest::Suggestion& one : all) {
        choices_->addItem(report::suggestion_in_short(one, *catalog_, format_));
    }
    if (meets) { // what falls short or is a danger is taken with open eyes only
        choices_->setCurrentRow(1);
    }
}

std::optional<plan::Plan> FirstSetup::plan() const
{
    const int row = choices_->currentRow();
    return found_ && row > 0 ? std::optional(found_->suggestions[static_cast<std::size_t>(row - 1)].plan) : bare_plan();
}

} // namespace loam::desk
