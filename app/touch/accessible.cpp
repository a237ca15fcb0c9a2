// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/accessible.h"

#include "touch/fit_label.h"
#include "touch/tap_button.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QButtonGroup>
#include <QCoreApplication>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

class AccessibleTap final : public QAccessibleWidget {
public:
    explicit AccessibleTap(TapButton* button) : QAccessibleWidget(button, QAccessible::Button) {}

    [[nodiscard]] QAccessible::Role role() const override
    {
        const TapButton* tap = button();
        if (!tap->isCheckable())
            return QAccessible::Button;
        const bool oneOfMany = tap->autoExclusive() || (tap->group() && tap->group()->exclusive());
        return oneOfMany ? QAccessible::RadioButton : QAccessible::CheckBox;
    }

    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.checkable = button()->isCheckable();
        state.checked = button()->isChecked();
        state.pressed = button()->isDown();
        return state;
    }

    [[nodiscard]] QStringList actionNames() const override
    {
        QStringList names = QAccessibleWidget::actionNames();
        if (widget()->isEnabled())
            names.prepend(button()->isCheckable() ? toggleAction() : pressAction());
        return names;
    }

    void doAction(const QString& name) override
    {
        if (name == pressAction() || name == toggleAction())
            button()->click();
        else
            QAccessibleWidget::doAction(name);
    }

private:
    [[nodiscard]] TapButton* button() const { return static_cast<TapButton*>(widget()); }
};

QAccessibleInterface* makeInterface(const QString& className, QObject* object)
{
    if (className == "strandbench::TapButton"_L1) {
        if (auto* button = qobject_cast<TapButton*>(object))
            return new AccessibleTap(button);
    } else if (className == "strandbench::FitLabel"_L1) {
        if (auto* label = qobject_cast<FitLabel*>(object))
            return new QAccessibleWidget(label, QAccessible::StaticText);
    }
    return nullptr;
}

} // namespace

void installAccessibility()
{
    static const bool once = [] {
        QAccessible::installFactory(makeInterface);
        return true;
    }();
    Q_UNUSED(once)
}

} // namespace strandbench
