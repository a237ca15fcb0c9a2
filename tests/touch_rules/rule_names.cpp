// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_parts.h"

#include "touch/fit_label.h"
#include "touch/shown_text.h"

#include <QAccessible>
#include <QHash>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

bool isControl(const QWidget* widget)
{
    return qobject_cast<const QAbstractButton*>(widget) || (widget->focusPolicy() & Qt::TabFocus);
}

void checkAccessible(QWidget* widget, bool control, std::vector<Breach>& out)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    if (!spoken) {
        out.push_back({u"role"_s, nameOf(widget), u"nothing that a screen reader can ask"_s, u"a name and a role"_s});
        return;
    }
    if (control && spoken->text(QAccessible::Name).trimmed().isEmpty())
        out.push_back({u"name"_s, nameOf(widget), u"no accessible name"_s, u"a name in the person's words"_s});
    const QAccessible::Role role = spoken->role();
    if (role == QAccessible::NoRole || role == QAccessible::Client)
        out.push_back({u"role"_s, nameOf(widget), u"no role"_s, u"the role of what it is"_s});
}

/// What changes about a control is told, too: whether a choice is chosen, what stands in a field. A text is read as it
/// stands.
void checkValue(QWidget* widget, std::vector<Breach>& out)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    if (!spoken)
        return;
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
        const QAccessible::State state = spoken->state();
        if (button->isCheckable() && (!state.checkable || (state.checked != 0) != button->isChecked()))
            out.push_back(
                {u"value"_s, nameOf(widget), u"does not tell whether it is chosen"_s, u"checked as it is shown"_s});
        if ((state.disabled != 0) == button->isEnabled())
            out.push_back(
                {u"value"_s, nameOf(widget), u"does not tell whether it can be used"_s, u"disabled as it is shown"_s});
        return;
    }
    const bool figure = spoken->valueInterface() || !spoken->text(QAccessible::Value).isEmpty() ||
                        spoken->role() == QAccessible::EditableText;
    if ((widget->focusPolicy() & Qt::TabFocus) && !figure)
        out.push_back({u"value"_s, nameOf(widget), u"no value"_s, u"what stands in it"_s});
}

/// A label that shows a text is named by it, or by more.
void checkRead(QWidget* widget, std::vector<Breach>& out)
{
    const auto* label = qobject_cast<const FitLabel*>(widget);
    QAccessibleInterface* spoken = label ? QAccessible::queryAccessibleInterface(widget) : nullptr;
    if (spoken && !label->text().trimmed().isEmpty() && spoken->text(QAccessible::Name).trimmed().isEmpty())
        out.push_back({u"name"_s, nameOf(widget), u"a text that is not read out"_s, u"what it shows"_s});
}

} // namespace

void checkNames(const Screen& screen, std::vector<Breach>& out)
{
    QHash<QString, int> seen;
    for (QWidget* widget : screen.widgets) {
        const bool control = isControl(widget);
        if (!control && !dynamic_cast<const ShowsText*>(widget))
            continue;
        checkAccessible(widget, control, out);
        checkRead(widget, out);
        if (control)
            checkValue(widget, out);
        if (widget->objectName().isEmpty())
            out.push_back({u"object_name"_s, nameOf(widget), u"none"_s, u"a stable name"_s});
        else if (++seen[widget->objectName()] == 2)
            out.push_back({u"object_name"_s, nameOf(widget), u"twice on one screen"_s, u"once"_s});
    }
}

} // namespace strandbench::rules
