// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/pin_screen.h"

#include "theme/sizes.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {

PinScreen::PinScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec))
{
    buildFrame(m_spec.context, m_spec.sentence);
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    m_dots = label(u"pin_dots"_s, TextRole::BigFigure, {}, Role::Ink, true);
    m_dots->setAlignment(Qt::AlignCenter);
    m_keys = new KeyPad(theme(), around.upright ? 4 : 6, this);
    m_keys->setPointAllowed(false);
    m_keys->setLongest(pinLongest);
    m_keys->setZeroInFrontKept(true);
    row->addWidget(m_dots, 1);
    row->addWidget(m_keys, 3);
    content()->addLayout(row, 1);
    answers()->stop()->hide();
    answers()->setWayOn(m_spec.wayOn);
    connect(m_keys, &KeyPad::textChanged, this, [this] {
        if (!m_waits)
            showTrouble({}, {});
        showDots();
    });
    connect(answers(), &AnswerBar::wayOnTapped, this, &PinScreen::give);
    showDots();
    m_keys->setFocus();
}

void PinScreen::showDots()
{
    const int count = static_cast<int>(m_keys->text().size());
    m_dots->setText(count == 0 ? u"–"_s : QString(count, u'•'));
    m_dots->setAccessibleName(tr("%n digit(s)", nullptr, count));
    enable();
}

void PinScreen::enable() { answers()->setWayOnEnabled(!m_busy && !m_waits && m_keys->text().size() >= pinShortest); }

void PinScreen::give()
{
    const QString pin = m_keys->text();
    m_keys->setText({});
    showDots();
    Q_EMIT given(pin);
}

void PinScreen::setBusy(bool busy)
{
    m_busy = busy;
    m_keys->setEnabled(!busy);
    if (busy)
        showTrouble({}, {}); // it would hide what follows
    else
        m_keys->setFocus(); // which went when they were disabled
    setSentence(busy ? tr("The PIN is looked at") : m_spec.sentence);
    enable();
}

void PinScreen::refused(const PinRefused& why)
{
    m_keys->setText({});
    switch (why.why) {
    case ActRefusal::NotSet:
        showTrouble(tr("No PIN is set on this bench."), tr("Set it: bench set-up, people."));
        break;
    case ActRefusal::NotCounted:
        showTrouble(tr("The try cannot be counted, so it was not looked at."),
                    tr("Check the disk and the PIN’s file."));
        break;
    case ActRefusal::MustWait: // what is left of the wait is told by tick()
        showTrouble(tr("The wait was not over: it was not looked at."), tr("Key it in again."));
        break;
    case ActRefusal::NoPin:
    case ActRefusal::WrongPin:
        showTrouble(tr("That is not the PIN."), tr("The try is in the log."));
        break;
    }
    showDots();
    tick();
}

void PinScreen::tick()
{
    const Duration left = m_spec.waitLeft();
    const bool waits = left.value() > 0;
    if (waits) // on the second: what is left of one counts whole
        showTrouble(
            tr("Wrong PINs were given. The next in %1.").arg(words().duration(seconds(std::ceil(inSeconds(left))))),
            {});
    else if (m_waits)
        showTrouble({}, {});
    m_waits = waits;
    enable();
}

} // namespace strandbench
