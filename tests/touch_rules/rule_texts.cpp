// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_parts.h"

#include "pictures/dew_picture.h"
#include "pictures/mix_block.h"
#include "pictures/phase_ribbon.h"
#include "pictures/puddle_picture.h"
#include "pictures/section_picture.h"
#include "pictures/timeline_picture.h"
#include "touch/fit_label.h"
#include "touch/tap_button.h"

#include <QAccessible>
#include <QFontInfo>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>
#include <optional>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr double leastReadMm = 3.4;
constexpr double hairMm = 1e-6;

struct TextState {
    bool fits;
    double smallestMm;
};

template <typename Widget> std::optional<TextState> stateAs(const QWidget* widget)
{
    if (const auto* shows = qobject_cast<const Widget*>(widget))
        return TextState{shows->textFits(), shows->smallestTextMm()};
    return std::nullopt;
}

// Widgets of the library itself draw one text at their font's size and clip what is too long.
std::optional<TextState> stateOfPlain(const QWidget* widget, const Theme& theme)
{
    const auto* label = qobject_cast<const QLabel*>(widget);
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    const auto* line = qobject_cast<const QLineEdit*>(widget);
    const QString text = label ? label->text() : (button ? button->text() : (line ? line->text() : QString()));
    if (text.isEmpty())
        return std::nullopt;
    const QSize wanted = widget->sizeHint();
    const bool wraps = label && label->wordWrap();
    bool fits = line || (wanted.width() <= widget->width() && wanted.height() <= widget->height());
    if (wraps)
        fits = label->heightForWidth(label->width()) <= label->height();
    return TextState{fits, theme.metrics().mm(QFontInfo(widget->font()).pixelSize())};
}

std::optional<TextState> stateOf(const QWidget* widget, const Theme& theme)
{
    for (const auto read :
         {stateAs<FitLabel>, stateAs<TapButton>, stateAs<MixBlock>, stateAs<PhaseRibbon>, stateAs<PuddlePicture>,
          stateAs<SectionPicture>, stateAs<DewPicture>, stateAs<TimelinePicture>})
        if (const std::optional<TextState> state = read(widget))
            return state;
    if (const auto* shows = dynamic_cast<const ShowsText*>(widget)) {
        TextState state{true, Theme::size(TextRole::Body).preferredMm};
        for (const ShownText& each : shows->shownTexts()) {
            state.fits = state.fits && each.fits;
            state.smallestMm = std::min(state.smallestMm, each.emMm);
        }
        return state;
    }
    return stateOfPlain(widget, theme);
}

double leastOf(const QWidget* widget)
{
    const auto* label = qobject_cast<const FitLabel*>(widget);
    if (label && label->textRole() == TextRole::Sentence)
        return 7.0;
    if (label && label->textRole() == TextRole::Figure)
        return 18.0;
    return leastReadMm;
}

// What is cut off, and how much room it has.
QString cutOff(const Screen& screen, const QWidget* widget)
{
    const auto* label = qobject_cast<const FitLabel*>(widget);
    return u"a text that is cut off: '%1' on %2 by %3"_s.arg(label ? label->text() : widget->accessibleName(),
                                                             screen.mm(widget->width()), screen.mm(widget->height()));
}

/// What is left out must be told whole, by the name that is read out.
void checkElided(const QWidget* widget, std::vector<Breach>& out)
{
    const auto* shows = dynamic_cast<const ShowsText*>(widget);
    if (!shows)
        return;
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
    const QString whole =
        spoken ? spoken->text(QAccessible::Name) + u'\n' + spoken->text(QAccessible::Description) : QString();
    const std::vector<ShownText> texts = shows->shownTexts();
    for (const ShownText& each : texts) {
        const QString left = QString(each.text).remove(u'\u2026').trimmed();
        const bool elided = left.size() < each.text.trimmed().size();
        if (!elided || whole.contains(each.text.trimmed()))
            continue; // nothing is left out, or the mark is the text's own
        // The first of its parts, as far as it is shown: what is told whole begins, or ends, with it.
        const QString part = left.section(u" \u00b7 "_s, 0, 0);
        if (!whole.contains(part))
            out.push_back({u"text_elided"_s, nameOf(widget), u"'%1' and nowhere the whole"_s.arg(each.text),
                           u"the whole as its name"_s});
    }
}

} // namespace

void checkTexts(const Screen& screen, std::vector<Breach>& out)
{
    for (const QWidget* widget : screen.widgets) {
        const std::optional<TextState> state = stateOf(widget, screen.theme);
        if (!state)
            continue;
        checkElided(widget, out);
        const double least = leastOf(widget);
        if (!state->fits)
            out.push_back({u"text_fits"_s, nameOf(widget), cutOff(screen, widget), u"every text whole"_s});
        if (state->smallestMm + hairMm < least)
            out.push_back({u"text_size"_s, nameOf(widget), QString::number(state->smallestMm, 'f', 2) + u" mm"_s,
                           QString::number(least, 'f', 1) + u" mm or more"_s});
        if (screen.seenOf(widget) != screen.rectOf(widget))
            out.push_back(
                {u"text_inside"_s, nameOf(widget), u"cut off"_s, u"whole inside its window and its parents"_s});
    }
}

} // namespace strandbench::rules
