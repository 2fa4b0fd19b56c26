#include "app/desk/views/courses_view.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/views/course_chart.hpp"
#include "app/desk/views/course_targets.hpp"
#include "app/desk/views/humidity_strip.hpp"
#include "app/words/capitals.hpp"
#include "app/words/courses.hpp"
#include "app/words/line_breaks.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

// Ready for the eye: plan and catalog need not outlive it.
struct Shown {
    assess::CourseResult result;
    std::vector<TargetBand> targets;
    std::vector<HumidityBand> humidity;
    QStringList sentences;
};

QString html_of(const Shown& shown)
{
    QString html;
    for (const QString& sentence : shown.sentences) {
        html += QStringLiteral("<p style='margin-top:0;margin-bottom:5px'>%1</p>")
                    .arg(words::figures_kept_whole(sentence).toHtmlEscaped());
    }
    const QString advice = words::course_advice(shown.result.id);
    if (!advice.isEmpty()) {
        html += QStringLiteral("<p style='margin-top:4px;margin-bottom:0'><b>%1</b><br>%2</p>")
                    .arg(QObject::tr("What to do"), advice.toHtmlEscaped());
    }
    return html;
}

} // namespace

struct CoursesView::Parts {
    QComboBox* chooser = nullptr;
    QLabel* key = nullptr;
    QLabel* waiting = nullptr;
    CourseChart* chart = nullptr;
    HumidityStrip* humidity = nullptr;
    QWidget* charts = nullptr;
    QTextBrowser* text = nullptr;
    QSplitter* split = nullptr;
    std::vector<Shown> shown;
    words::Formatter formatter;
    std::string enclosure;

    const Shown* chosen() const
    {
        const int row = chooser->currentIndex();
        return row >= 0 && row < static_cast<int>(shown.size()) ? &shown[static_cast<std::size_t>(row)] : nullptr;
    }
    void fill_chooser() const;
};

void CoursesView::Parts::fill_chooser() const
{
    const QSignalBlocker quiet(chooser);
    const QString kept = chooser->currentData().toString();
    chooser->clear();
    for (const Shown& each : shown) {
        chooser->addItem(words::capitalised(words::course_name(each.result.id)),
                         QString::fromStdString(each.result.id));
    }
    chooser->setCurrentIndex(shown.empty() ? -1 : std::max(0, chooser->findData(kept)));
}

CoursesView::CoursesView(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>())
{
    setObjectName(QStringLiteral("courses"));
    parts_->chooser = new QComboBox(this);
    parts_->chooser->setObjectName(QStringLiteral("courseChooser"));
    parts_->chooser->setAccessibleName(tr("Day or drill that the chart shows"));
    parts_->chooser->setMinimumContentsLength(16);
    auto* label = new QLabel(tr("Sho&w:"), this);
    label->setBuddy(parts_->chooser);
    parts_->key = new QLabel(tr("Band: range. Hatched: target. Bar on top: lamps on. Drop: misting."), this);
    parts_->key->setObjectName(QStringLiteral("courseKey"));
    parts_->key->setWordWrap(true);
    parts_->waiting = new QLabel(tr("The hours are worked out last; they come in a moment."), this);
    parts_->waiting->setObjectName(QStringLiteral("courseWaiting"));
    parts_->waiting->setContentsMargins(8, 2, 8, 2);
    parts_->charts = new QWidget(this);
    parts_->chart = new CourseChart(parts_->charts);
    parts_->humidity = new HumidityStrip(parts_->charts);
    auto* stack = new QVBoxLayout(parts_->charts);
    stack->setContentsMargins(0, 0, 0, 0);
    stack->setSpacing(0);
    stack->addWidget(parts_->chart, 5);
    stack->addWidget(parts_->humidity, 2);
    connect(parts_->chart, &CourseChart::plotMoved, parts_->humidity, &HumidityStrip::align);
    parts_->text = new QTextBrowser(this);
    parts_->text->setObjectName(QStringLiteral("courseText"));
    parts_->text->setAccessibleName(tr("What the course comes to"));
    parts_->text->setFrameShape(QFrame::NoFrame);
    parts_->split = new QSplitter(Qt::Horizontal, this);
    parts_->split->addWidget(parts_->charts);
    parts_->split->addWidget(parts_->text);
    parts_->split->setChildrenCollapsible(false);
    parts_->split->setStretchFactor(0, 3);
    parts_->split->setStretchFactor(1, 2);
    parts_->split->setSizes({370, 260});

    auto* row = new QHBoxLayout;
    row->setContentsMargins(8, 4, 8, 2);
    row->addWidget(label);
    row->addWidget(parts_->chooser);
    row->addSpacing(8);
    row->addWidget(parts_->key, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(parts_->split, 1);
    column->addWidget(parts_->waiting);
    connect(parts_->chooser, &QComboBox::currentIndexChanged, this, [this] {
        show_chosen();
        emit courseChosen();
    });
    clear();
}

CoursesView::~CoursesView() = default;

void CoursesView::clear()
{
    parts_->shown.clear();
    parts_->enclosure.clear();
    parts_->fill_chooser();
    parts_->waiting->show();
    show_chosen();
}

void CoursesView::show_courses(const assess::EnclosureResult& enclosure, bool complete, const words::Speaker& speaker)
{
    const bool none = enclosure.days.empty() && enclosure.drills.empty() && !enclosure.warm_up;
    parts_->waiting->setVisible(none && !complete);
    if (none && !complete && parts_->enclosure == enclosure.id &&
        parts_->formatter.system() == speaker.formatter().system()) {
        return; // the last ones tell more than none
    }
    parts_->enclosure = enclosure.id;
    parts_->formatter = speaker.formatter();
    parts_->shown.clear();
    const auto add = [&](const assess::CourseResult& course) {
        parts_->shown.push_back({course, target_bands(enclosure, course), humidity_bands(enclosure, course),
                                 words::course_sentences(course, speaker)});
    };
    std::for_each(enclosure.days.begin(), enclosure.days.end(), add);
    if (enclosure.warm_up) {
        add(*enclosure.warm_up);
    }
    std::for_each(enclosure.drills.begin(), enclosure.drills.end(), add);
    parts_->fill_chooser();
    show_chosen();
    emit courseChosen(); // another enclosure's or newer ones
}

void CoursesView::show_chosen()
{
    const Shown* shown = parts_->chosen();
    parts_->chooser->setEnabled(shown != nullptr);
    parts_->key->setVisible(shown != nullptr);
    parts_->charts->setVisible(shown != nullptr && shown->result.course.points.size() > 1);
    if (shown == nullptr) {
        parts_->text->setHtml(parts_->waiting->isHidden()
                                  ? QStringLiteral("<p>%1</p>")
                                        .arg(tr("Nothing is known of the hours of this box: its "
                                                "balance of heat found no solution."))
                                  : QString());
        return;
    }
    parts_->chart->show_course(shown->result, shown->targets, parts_->formatter);
    parts_->humidity->show_course(shown->result, shown->humidity, parts_->formatter);
    parts_->chart->setAccessibleDescription(shown->sentences.join(QLatin1Char(' ')));
    parts_->text->setHtml(html_of(*shown));
}

std::optional<Explanation> CoursesView::explanation() const
{
    const Shown* shown = parts_->chosen();
    if (shown == nullptr) {
        return std::nullopt;
    }
    Explanation why;
    why.title = words::capitalised(words::course_name(shown->result.id));
    why.how = words::course_method(shown->result.id);
    QStringList sources;
    for (const assess::TimeToLimit& limit : shown->result.limits) {
        sources << words::source(limit.source);
    }
    sources.removeDuplicates();
    sources.removeAll(QString());
    why.source = sources.join(QLatin1Char('\n'));
    return why;
}

} // namespace loam::desk
