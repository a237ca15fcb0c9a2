// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/stepper.h"

#include "theme/sizes.h"

#include <QCoreApplication>
#include <QHBoxLayout>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

constexpr int firstRepeatMs = 500;
constexpr int nextRepeatMs = 150;
constexpr TextSize unitTitle{6.0, 4.0}; // mm

} // namespace

Stepper::Stepper(const Theme& theme, const QString& name, const QString& caption, QWidget* parent)
    : QWidget(parent),
      m_theme(theme),
      m_caption(caption),
      m_minus(new TapButton(theme, name + u"_minus"_s, TapButton::Kind::Plain, this)),
      m_figure(new TapButton(theme, name + u"_figure"_s, TapButton::Kind::Quiet, this)),
      m_unit(new TapButton(theme, name + u"_unit"_s, TapButton::Kind::Quiet, this)),
      m_plus(new TapButton(theme, name + u"_plus"_s, TapButton::Kind::Plain, this))
{
    setObjectName(name);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(sizes::gap));
    for (TapButton* part : {m_minus, m_figure, m_unit, m_plus}) {
        const bool figure = part == m_figure;
        part->setSizePolicy(figure ? QSizePolicy::Ignored : QSizePolicy::Fixed, QSizePolicy::Preferred);
        part->setMinimumSize(theme.px(sizes::target), theme.px(sizes::target));
        row->addWidget(part, figure ? 1 : 0);
    }
    m_minus->setSign(Pictogram::Minus);
    m_minus->setAccessibleName(QCoreApplication::translate("Stepper", "%1: less").arg(caption));
    m_plus->setSign(Pictogram::Plus);
    m_plus->setAccessibleName(QCoreApplication::translate("Stepper", "%1: more").arg(caption));
    m_figure->setTitleSize(Theme::size(TextRole::BigFigure));
    m_figure->setSecondLine(caption);
    m_unit->setTitleSize(unitTitle);
    wireStep(m_minus, -1);
    wireStep(m_plus, +1);
    connect(m_figure, &TapButton::clicked, this, &Stepper::figureTapped);
    connect(m_unit, &TapButton::clicked, this, &Stepper::unitTapped);
    connect(&m_repeat, &QTimer::timeout, this, &Stepper::repeat);
    setShown({}, {});
}

void Stepper::setShown(const QString& figure, const QString& unit)
{
    const QString spoken = figure.isEmpty() ? QCoreApplication::translate("Stepper", "not answered yet")
                                            : (figure + u' ' + unit).trimmed();
    m_figure->setTitle(figure.isEmpty() ? u"–"_s : figure);
    m_figure->setAccessibleName(QCoreApplication::translate("Stepper", "%1, %2").arg(m_caption, spoken));
    m_unit->setTitle(unit);
    m_unit->setAccessibleName(QCoreApplication::translate("Stepper", "%1, unit: %2").arg(m_caption, unit));
    m_unit->setVisible(!unit.isEmpty());
}

void Stepper::setChosen(bool chosen) { m_figure->setMarked(chosen); }

// A press alone does nothing: one step comes with the click, further steps while it stays down.
void Stepper::wireStep(TapButton* key, int direction)
{
    connect(key, &TapButton::pressed, this, [this, key, direction] {
        m_heldKey = key;
        m_heldDirection = direction;
        m_repeated = false;
        m_repeat.start(firstRepeatMs);
    });
    connect(key, &TapButton::released, &m_repeat, &QTimer::stop);
    connect(key, &TapButton::clicked, this, [this, key, direction] {
        const bool endsRepeats = m_repeated && m_heldKey == key;
        m_repeated = false;
        if (!endsRepeats)
            Q_EMIT stepped(direction);
    });
}

void Stepper::repeat()
{
    if (!m_heldKey || !m_heldKey->isDown() || !m_heldKey->isVisible()) {
        m_repeat.stop();
        return;
    }
    m_repeated = true;
    m_repeat.start(nextRepeatMs);
    Q_EMIT stepped(m_heldDirection);
}

} // namespace strandbench
