// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up_screen.h"

#include "theme/sizes.h"

#include "languages.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

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

SetUpScreen::SetUpScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_set_up"_s, parent)
{
    buildFrame({}, tr("Bench set-up"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    content()->addLayout(column, 1);

    const Settings& now = around.settings;
    std::vector<TapButton*> languages;
    for (const QString& each : carriedLanguages()) {
        Settings wanted = now;
        wanted.language = each;
        languages.push_back(key(u"language_"_s + each, ownName(each), now.language == each, wanted));
    }
    addRow(column, tr("Language"), languages);

    Settings metric = now, us = now, day = now, night = now, right = now, left = now;
    metric.units = UnitSystem::Metric;
    us.units = UnitSystem::UsCustomary;
    day.dayNight = DayNight::Day;
    night.dayNight = DayNight::Night;
    right.hand = Hand::Right;
    left.hand = Hand::Left;
    std::vector<TapButton*> units{key(u"units_metric"_s, u"mm, g, °C"_s, now.units == UnitSystem::Metric, metric),
                                  key(u"units_us"_s, u"in, oz, °F"_s, now.units == UnitSystem::UsCustomary, us)};
    std::vector<TapButton*> colours{key(u"colours_day"_s, tr("Day"), now.dayNight == DayNight::Day, day),
                                    key(u"colours_night"_s, tr("Night"), now.dayNight == DayNight::Night, night)};
    std::vector<TapButton*> hands{key(u"hand_right"_s, tr("Right hand"), now.hand == Hand::Right, right),
                                  key(u"hand_left"_s, tr("Left hand"), now.hand == Hand::Left, left)};
    if (around.upright) {
        addRow(column, tr("Units"), units);
        addRow(column, tr("Colours"), colours);
        addRow(column, tr("Answers for"), hands);
    } else {
        std::vector<TapButton*> all(units);
        all.insert(all.end(), colours.begin(), colours.end());
        all.insert(all.end(), hands.begin(), hands.end());
        addRow(column, tr("Bench"), all);
    }
    column->addStretch(1);
    answers()->setWayOn(tr("Calibrate the glass"));
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, &SetUpScreen::calibrateWanted);
}

TapButton* SetUpScreen::key(const QString& name, const QString& title, bool chosen, const Settings& wanted)
{
    auto* made = new TapButton(theme(), name, TapButton::Kind::Choice, this);
    made->setTitle(title);
    made->setCheckable(true);
    made->setChecked(chosen);
    connect(made, &TapButton::clicked, this, [this, made, chosen, wanted] {
        made->setChecked(chosen);
        if (!chosen)
            Q_EMIT settingsChanged(wanted);
    });
    return made;
}

void SetUpScreen::addRow(QBoxLayout* column, const QString& caption, const std::vector<TapButton*>& keys)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    auto* text = label(u"caption_"_s + keys.front()->objectName(), TextRole::Small, caption, Role::MutedInk);
    text->setFixedWidth(px(24));
    row->addWidget(text);
    for (TapButton* each : keys)
        row->addWidget(each, 1);
    column->addLayout(row, 1);
}

} // namespace strandbench
