// SPDX-License-Identifier: GPL-3.0-or-later
// The page of the bench itself: language, units, colours, hand, motion, foot switch.
#include "screens/set_up/set_up_screen.h"
#include "theme/sizes.h"

#include "languages.h"

#include <QKeyEvent>
#include <QKeySequence>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double captionWidth = 21; // mm

/// A language is named in itself, whatever language is set: who cannot read the rest finds the own one.
QString ownName(const QString& language)
{
    if (language == u"de"_s)
        return u"Deutsch"_s;
    if (language == u"es"_s)
        return u"Español"_s;
    if (language == u"fr"_s)
        return u"Français"_s;
    return u"English"_s;
}

} // namespace

SetUpBenchScreen::SetUpBenchScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up"_s, place, parent)
{
    auto* column = new QVBoxLayout(buildPage({}, tr("Set up the bench")));
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    const std::vector<Row> rows{languages(), footSwitch(), units(), colours(), hands(), motion()};
    const std::size_t across = around.upright ? 1 : 2;
    for (std::size_t i = 0; i < rows.size(); i += across)
        addRow(column,
               {rows.begin() + static_cast<std::ptrdiff_t>(i), rows.begin() + static_cast<std::ptrdiff_t>(i + across)});
}

SetUpBenchScreen::Row SetUpBenchScreen::languages()
{
    const Settings& now = around().settings;
    Row row{tr("Language"), {}};
    for (const QString& each : carriedLanguages()) {
        Settings wanted = now;
        wanted.language = each;
        row.keys.push_back(choice(u"language_"_s + each, ownName(each), now.language == each, wanted));
    }
    return row;
}

SetUpBenchScreen::Row SetUpBenchScreen::units()
{
    const Settings& now = around().settings;
    Settings metric = now;
    Settings us = now;
    metric.units = UnitSystem::Metric;
    us.units = UnitSystem::UsCustomary;
    return {tr("Units"),
            {choice(u"units_metric"_s, u"mm, g, °C"_s, now.units == UnitSystem::Metric, metric),
             choice(u"units_us"_s, u"in, oz, °F"_s, now.units == UnitSystem::UsCustomary, us)}};
}

SetUpBenchScreen::Row SetUpBenchScreen::colours()
{
    const Settings& now = around().settings;
    Settings day = now;
    Settings night = now;
    day.dayNight = DayNight::Day;
    night.dayNight = DayNight::Night;
    return {tr("Colours"),
            {choice(u"colours_day"_s, tr("Day"), now.dayNight == DayNight::Day, day),
             choice(u"colours_night"_s, tr("Night"), now.dayNight == DayNight::Night, night)}};
}

SetUpBenchScreen::Row SetUpBenchScreen::hands()
{
    const Settings& now = around().settings;
    Settings right = now;
    Settings left = now;
    right.hand = Hand::Right;
    left.hand = Hand::Left;
    return {tr("Answers for"),
            {choice(u"hand_right"_s, tr("Right hand"), now.hand == Hand::Right, right),
             choice(u"hand_left"_s, tr("Left hand"), now.hand == Hand::Left, left)}};
}

SetUpBenchScreen::Row SetUpBenchScreen::motion()
{
    const Settings& now = around().settings;
    Settings full = now;
    Settings reduced = now;
    full.reducedMotion = false;
    reduced.reducedMotion = true;
    return {tr("Motion"),
            {choice(u"motion_full"_s, tr("Full"), !now.reducedMotion, full),
             choice(u"motion_reduced"_s, tr("In steps"), now.reducedMotion, reduced)}};
}

SetUpBenchScreen::Row SetUpBenchScreen::footSwitch()
{
    const Settings& now = around().settings;
    const bool any = now.footSwitchKey == 0;
    Settings anyKey = now;
    anyKey.footSwitchKey = 0;
    m_oneKey = key(u"foot_switch_one"_s, TapButton::Kind::Choice, {});
    connect(m_oneKey, &TapButton::clicked, this, [this] { listen(!m_listening); });
    listen(false);
    return {tr("Foot switch"), {choice(u"foot_switch_any"_s, tr("Any key"), any, anyKey), m_oneKey}};
}

void SetUpBenchScreen::listen(bool listening)
{
    m_listening = listening;
    const int key = around().settings.footSwitchKey;
    const QString name = key == 0 ? tr("One key") : QKeySequence(key).toString(QKeySequence::NativeText);
    m_oneKey->setTitle(listening ? tr("Press now") : name);
    m_oneKey->setChecked(key != 0);
    m_oneKey->setMarked(listening);
    setSentence(listening ? tr("Press the foot switch now") : tr("Set up the bench"));
    if (listening)
        setFocus(Qt::OtherFocusReason); // Escape and Tab are left to what they mean
}

void SetUpBenchScreen::keyPressEvent(QKeyEvent* event)
{
    if (!m_listening)
        return Screen::keyPressEvent(event);
    if (event->key() == Qt::Key_Escape)
        return listen(false);
    if (event->isAutoRepeat())
        return;
    if (event->key() == 0 || event->key() == Qt::Key_unknown)
        return showTrouble(tr("This key has no name of its own."), tr("Set the foot switch to send another one."));
    Settings wanted = around().settings;
    wanted.footSwitchKey = event->key();
    listen(false);
    Q_EMIT settingsChanged(wanted);
}

void SetUpBenchScreen::focusOutEvent(QFocusEvent* event)
{
    Screen::focusOutEvent(event);
    if (m_listening)
        listen(false);
}

void SetUpBenchScreen::addRow(QBoxLayout* column, const std::vector<Row>& rows)
{
    auto* across = new QHBoxLayout;
    across->setSpacing(px(sizes::gap));
    for (const Row& row : rows) {
        auto* half = new QHBoxLayout;
        half->setSpacing(px(sizes::gap));
        FitLabel* caption =
            label(u"caption_"_s + row.keys.front()->objectName(), TextRole::Small, row.caption, Role::MutedInk);
        caption->setFixedWidth(px(captionWidth));
        half->addWidget(caption);
        for (TapButton* each : row.keys) {
            each->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
            half->addWidget(each, 1);
        }
        // As wide as there are keys to hold.
        across->addLayout(half, static_cast<int>(std::max<std::size_t>(row.keys.size(), 3)));
    }
    column->addLayout(across, 1);
}

} // namespace strandbench
