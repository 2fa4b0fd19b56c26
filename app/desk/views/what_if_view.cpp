#include "app/desk/views/what_if_view.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>
#include <utility>

#include "app/desk/views/reading_track.hpp"
#include "app/desk/views/trial_readings.hpp"
#include "app/words/capitals.hpp"

namespace loam::desk {

namespace {

constexpr double cover_step = 0.05; // of the top
constexpr double misting_step_l = 0.05;
constexpr double least_misting_l = 1.0; // that the slider reaches

} // namespace

struct WhatIfView::Parts {
    QSlider* cover = nullptr;
    QSlider* misting = nullptr;
    QLabel* cover_figure = nullptr;
    QLabel* misting_figure = nullptr;
    QLabel* note = nullptr;
    QPushButton* take = nullptr;
    QPushButton* back = nullptr;
    std::array<std::array<ReadingTrack*, trial_readings>, trial_cases.size()> tracks{};
    std::string enclosure;
    std::optional<assess::TrialRoom> room;
    const assess::EnclosureResult* result = nullptr; // kept alive by who shows it
    SharedTrialAnswer answer;
    words::Formatter formatter;
    assess::Trial trial;

    double most_cover() const { return room ? room->most_covered_share : 0.0; }
    double share_at(int step) const { return std::min(step * cover_step, most_cover()); }
    int cover_home() const { return room ? static_cast<int>(std::lround(room->covered_share / cover_step)) : 0; }
    double misting_l() const { return room ? room->misting_l_per_day.value_or(0.0) : 0.0; }
    int misting_home() const { return static_cast<int>(std::lround(misting_l() / misting_step_l)); }
    bool trying() const { return trial.covered_share || trial.misting_l_per_day; }
    QString note_text() const;
};

QString WhatIfView::Parts::note_text() const
{
    if (!room) {
        return QObject::tr("Too little is known of this box to try anything out.");
    }
    if (answer && !answer->tried && trying()) {
        return QObject::tr("For this trial the balance found no solution.");
    }
    if (!room->mesh) {
        return QObject::tr("The top is no mesh: a cover would change nothing, so only misting can be tried.");
    }
    if (room->most_covered_share <= 0.0) {
        return QObject::tr("No cover keeps clear of the lamps, so only misting can be tried.");
    }
    return QObject::tr(
               "Ring: the plan. Dot: the trial. Hatched: target. Bar: range. Covers lie across the box from its "
               "ends, clear of what is hot, over %1 of the top at most.")
        .arg(formatter.value(room->most_covered_share, words::Quantity::fraction));
}

WhatIfView::WhatIfView(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>())
{
    setObjectName(QStringLiteral("whatIf"));
    parts_->note = new QLabel(this);
    parts_->note->setObjectName(QStringLiteral("trialNote"));
    parts_->note->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 6);
    column->setSpacing(8);
    column->addLayout(make_controls());
    column->addLayout(make_tracks());
    column->addWidget(parts_->note);
    column->addStretch(1);
    connect(parts_->take, &QPushButton::clicked, this, [this] { emit taken(parts_->enclosure, parts_->trial); });
    connect(parts_->back, &QPushButton::clicked, this, &WhatIfView::to_plan);
    refresh_sliders();
    refresh_tracks();
}

QGridLayout* WhatIfView::make_controls()
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(1, 1);
    const auto add = [&](int row, const QString& text, const QString& says, const QString& name) {
        auto* slider = new QSlider(Qt::Horizontal, this);
        slider->setObjectName(name + QStringLiteral("Slider"));
        slider->setAccessibleName(says);
        slider->setPageStep(4);
        connect(slider, &QSlider::valueChanged, this, &WhatIfView::moved);
        auto* label = new QLabel(text, this);
        label->setBuddy(slider);
        auto* figure = new QLabel(this);
        figure->setObjectName(name + QStringLiteral("Figure"));
        figure->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("00.00 L → 00.00 L")));
        grid->addWidget(label, row, 0);
        grid->addWidget(slider, row, 1);
        grid->addWidget(figure, row, 2);
        return std::pair(slider, figure);
    };
    std::tie(parts_->cover, parts_->cover_figure) =
        add(0, tr("Top &covered"), tr("Share of the top that is covered"), QStringLiteral("cover"));
    std::tie(parts_->misting, parts_->misting_figure) =
        add(1, tr("&Misted a day"), tr("Water misted a day"), QStringLiteral("misting"));
    parts_->take = new QPushButton(tr("&Take into the plan"), this);
    parts_->take->setObjectName(QStringLiteral("takeTrial"));
    parts_->back = new QPushButton(tr("&Back to the plan’s"), this);
    parts_->back->setObjectName(QStringLiteral("dropTrial"));
    grid->addWidget(parts_->take, 0, 3);
    grid->addWidget(parts_->back, 1, 3);
    return grid;
}

QGridLayout* WhatIfView::make_tracks()
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(0);
    QFont bold = font();
    bold.setBold(true);
    for (std::size_t c = 0; c < trial_cases.size(); ++c) {
        const int column = static_cast<int>(c) + 1;
        auto* head = new QLabel(words::capitalised(words::case_name(trial_cases[c])), this);
        head->setFont(bold);
        head->setContentsMargins(8, 0, 0, 0);
        grid->addWidget(head, 0, column);
        grid->setColumnStretch(column, 1);
        for (int reading = 0; reading < trial_readings; ++reading) {
            auto* track = new ReadingTrack(this);
            track->setObjectName(QStringLiteral("track-%1-%2").arg(QLatin1String(trial_cases[c])).arg(reading));
            parts_->tracks[c][static_cast<std::size_t>(reading)] = track;
            grid->addWidget(track, reading + 1, column);
        }
    }
    for (int reading = 0; reading < trial_readings; ++reading) {
        grid->addWidget(new QLabel(words::capitalised(trial_reading_name(reading)), this), reading + 1, 0);
    }
    return grid;
}

WhatIfView::~WhatIfView() = default;

assess::Trial WhatIfView::trial() const
{
    return parts_->trial;
}

void WhatIfView::show_room(const std::string& enclosure, const std::optional<assess::TrialRoom>& room,
                           const words::Formatter& formatter)
{
    const bool other = enclosure != parts_->enclosure;
    const bool changed = other || room != parts_->room;
    parts_->formatter = formatter;
    parts_->enclosure = enclosure;
    parts_->room = room;
    if (changed) { // what was tried was of another state of the plan
        parts_->trial = {};
        parts_->answer = nullptr;
    } else if (parts_->trying()) {
        emit wanted(parts_->enclosure, parts_->trial);
    }
    refresh_sliders();
    refresh_tracks();
}

void WhatIfView::show_result(const assess::EnclosureResult* result)
{
    parts_->result = result;
    refresh_tracks();
}

void WhatIfView::show_answer(const SharedTrialAnswer& answer)
{
    if (answer && answer->enclosure == parts_->enclosure && parts_->trying()) {
        parts_->answer = answer; // of this trial, or of one on the way to it
        refresh_tracks();
    }
}

void WhatIfView::moved()
{
    const int cover = parts_->cover->value();
    const int misting = parts_->misting->value();
    parts_->trial.covered_share = cover == parts_->cover_home() ? std::nullopt : std::optional(parts_->share_at(cover));
    parts_->trial.misting_l_per_day =
        misting == parts_->misting_home() ? std::nullopt : std::optional(misting * misting_step_l);
    if (parts_->trying()) {
        emit wanted(parts_->enclosure, parts_->trial);
    } else {
        parts_->answer = nullptr;
    }
    refresh_sliders();
    refresh_tracks();
}

void WhatIfView::to_plan()
{
    parts_->trial = {};
    parts_->answer = nullptr;
    refresh_sliders();
    refresh_tracks();
}

void WhatIfView::refresh_sliders()
{
    const QSignalBlocker quiet_cover(parts_->cover);
    const QSignalBlocker quiet_misting(parts_->misting);
    const bool known = parts_->room.has_value();
    const int most = static_cast<int>(std::ceil(parts_->most_cover() / cover_step - 1e-9));
    parts_->cover->setEnabled(known && parts_->room->mesh && most > 0);
    parts_->misting->setEnabled(known);
    parts_->cover->setRange(0, std::max(most, parts_->cover_home()));
    parts_->misting->setRange(
        0, static_cast<int>(std::ceil(std::max(least_misting_l, 2.0 * parts_->misting_l()) / misting_step_l)));
    if (!parts_->trial.covered_share) {
        parts_->cover->setValue(parts_->cover_home());
    }
    if (!parts_->trial.misting_l_per_day) {
        parts_->misting->setValue(parts_->misting_home());
    }
    const auto figure = [&](double now, const std::optional<double>& then, words::Quantity quantity) {
        const QString planned = parts_->formatter.value(now, quantity);
        return then ? tr("%1 → %2").arg(planned, parts_->formatter.value(*then, quantity)) : planned;
    };
    const bool stated = known && parts_->room->misting_l_per_day;
    parts_->cover_figure->setText(
        known ? figure(parts_->room->covered_share, parts_->trial.covered_share, words::Quantity::fraction)
              : tr("not known"));
    parts_->misting_figure->setText(
        stated || parts_->trial.misting_l_per_day
            ? figure(parts_->misting_l(), parts_->trial.misting_l_per_day, words::Quantity::volume)
            : tr("not stated"));
    parts_->take->setEnabled(parts_->trying());
    parts_->back->setEnabled(parts_->trying());
}

void WhatIfView::refresh_tracks()
{
    for (std::size_t c = 0; c < trial_cases.size(); ++c) {
        for (int reading = 0; reading < trial_readings; ++reading) {
            TrackReading track = planned_reading(parts_->result, trial_cases[c], reading);
            track.then = parts_->trying() ? tried_reading(parts_->answer, trial_cases[c], reading) : std::nullopt;
            parts_->tracks[c][static_cast<std::size_t>(reading)]->show_reading(track, parts_->formatter);
        }
    }
    parts_->note->setText(parts_->note_text());
}

} // namespace loam::desk
