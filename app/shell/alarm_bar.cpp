// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/alarm_bar.h"

#include "theme/sizes.h"

#include <QAccessibleWidget>
#include <QPainter>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double blockMargin = 1.2; // mm above and below, as on the ribbon
// Colours swap once a second, two swaps being one flash: far below three flashes a second, above which light may bring
// on a seizure (WCAG 2.1, 2.3.1). However often it is ticked; a tick that is a little early counts.
const Duration leastBetweenSwaps = seconds(0.9);

/// A button whose name counts along without a reader being told every second.
class AlarmInterface final : public QAccessibleWidget {
public:
    explicit AlarmInterface(AlarmButton* button) : QAccessibleWidget(button, QAccessible::Button) {}

    [[nodiscard]] QString text(QAccessible::Text which) const override
    {
        return which == QAccessible::Name ? button()->spoken() : QAccessibleWidget::text(which);
    }

    [[nodiscard]] QStringList actionNames() const override
    {
        return QStringList{pressAction()} + QAccessibleWidget::actionNames();
    }

    void doAction(const QString& name) override
    {
        if (name == pressAction())
            button()->click();
        else
            QAccessibleWidget::doAction(name);
    }

private:
    [[nodiscard]] AlarmButton* button() const { return static_cast<AlarmButton*>(widget()); }
};

class BarInterface final : public QAccessibleWidget {
public:
    explicit BarInterface(AlarmBar* bar) : QAccessibleWidget(bar, QAccessible::AlertMessage) {}

    [[nodiscard]] QString text(QAccessible::Text which) const override
    {
        return which == QAccessible::Name ? static_cast<AlarmBar*>(widget())->spoken() : QAccessibleWidget::text(which);
    }
};

QAccessibleInterface* makeInterface(const QString&, QObject* object)
{
    if (auto* button = qobject_cast<AlarmButton*>(object))
        return new AlarmInterface(button);
    if (auto* bar = qobject_cast<AlarmBar*>(object))
        return new BarInterface(bar);
    return nullptr;
}

void installAlarmAccess()
{
    static const bool once = [] {
        QAccessible::installFactory(makeInterface);
        return true;
    }();
    Q_UNUSED(once)
}

} // namespace

AlarmBar::AlarmBar(const Theme& theme, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    installAlarmAccess();
    setObjectName(u"alarm_bar"_s);
    setAttribute(Qt::WA_NoMousePropagation); // a tap that is not taken goes nowhere else
    setFixedHeight(theme.px(sizes::ribbon) + 2 * theme.px(blockMargin));
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        auto* button = new AlarmButton(theme, u"alarm_%1"_s.arg(i), this);
        button->setAttribute(Qt::WA_NoMousePropagation);
        button->hide();
        connect(button, &AlarmButton::clicked, this, [this, button, i] {
            button->rest(m_now); // a finger that bounces answers once
            Q_EMIT answered(i);
        });
        m_buttons[i] = button;
    }
}

void AlarmBar::setAlarms(const std::vector<AlarmShown>& alarms, const Instant& now)
{
    m_now = now;
    const std::size_t before = m_kinds.size();
    const std::size_t shown = std::min(alarms.size(), m_buttons.size());
    bool another = false;
    m_kinds.clear();
    for (std::size_t i = 0; i < shown; ++i) {
        another = m_buttons[i]->setAlarm(alarms[i], now) || another;
        m_kinds.push_back(alarms[i].kind);
        if (shown < before)
            m_buttons[i]->rest(now); // it grows over where the other one was
    }
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        if (i >= shown)
            m_buttons[i]->forget();
        m_buttons[i]->setVisible(i < shown);
    }
    placeButtons();
    update();
    if (!another)
        return;
    setInverted(false, now);
    QAccessibleEvent told(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void AlarmBar::tick(const Instant& now)
{
    m_now = now;
    for (AlarmButton* button : m_buttons)
        button->tick(now);
    if (!m_theme.reducedMotion() && elapsed(m_swapped, now) >= leastBetweenSwaps)
        setInverted(!m_inverted, now);
}

void AlarmBar::setInverted(bool inverted, const Instant& now)
{
    m_inverted = inverted;
    m_swapped = now;
    for (AlarmButton* button : m_buttons)
        button->setInverted(inverted);
}

QString AlarmBar::spoken() const
{
    QStringList all;
    for (std::size_t i = 0; i < m_kinds.size(); ++i)
        all << m_buttons[i]->spoken();
    return all.join(u". "_s);
}

void AlarmBar::placeButtons()
{
    const int margin = m_theme.px(sizes::margin);
    const int top = m_theme.px(blockMargin);
    const int tall = height() - 2 * top;
    if (m_kinds.size() < 2)
        return m_buttons[0]->setGeometry(margin, top, width() - 2 * margin, tall);
    const int gap = m_theme.px(sizes::gap);
    const int wide = (width() - 2 * margin - gap) / 2;
    m_buttons[0]->setGeometry(margin, top, wide, tall);
    m_buttons[1]->setGeometry(width() - margin - wide, top, wide, tall);
}

void AlarmBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeButtons();
}

void AlarmBar::paintEvent(QPaintEvent*)
{
    // Behind the buttons and around them the colour stays, whichever way they are turned.
    QPainter painter(this);
    const int share = m_kinds.empty() ? 0 : width() / static_cast<int>(m_kinds.size());
    for (std::size_t i = 0; i < m_kinds.size(); ++i) {
        const int left = static_cast<int>(i) * share;
        painter.fillRect(left, 0, width() - left, height(), m_theme.color(colorsOf(m_kinds[i]).ground));
    }
}

} // namespace strandbench
