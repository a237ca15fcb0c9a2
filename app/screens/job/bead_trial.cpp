// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/bead_trial.h"

#include "gear/instruments.h"
#include "screens/figures/figure_wiring.h"
#include "screens/job/in_hand.h"
#include "screens/set_up/instrument_words.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "touch/hold_button.h"
#include "words/role_words.h"

#include <QCoreApplication>
#include <QDate>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// What calibrateBead() takes.
constexpr double leastLength = 20; // mm
constexpr double mostLength = 1000;
constexpr double leastMass = 0.05; // g
constexpr double mostMass = 100;
constexpr double leastPerLength = 1; // mg/mm
constexpr double mostPerLength = 500;
constexpr std::size_t mostBeads = 20;
constexpr std::size_t shownBeads = 6;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(BeadTrial)
};

FigureSpec lengthFigure(const Words& words)
{
    FigureSpec figure;
    figure.name = u"bead_length_mm"_s;
    figure.caption = Says::tr("Length");
    figure.keyPadSentence = Says::tr("Key in the length of the bead");
    figure.start = inMetres(millimetres(100));
    inLengths(figure, words);
    wire<Length>(figure, {millimetres(leastLength), millimetres(mostLength)}, words, printLength, parseLength);
    return figure;
}

/// Finer than hardener is mixed: the scatter of the beads is told by hundredths of a gram.
Printed printBead(Mass mass, const Words& words)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    return {words.number(us ? inOunces(mass) : inGrams(mass), us ? 3 : 2), massUnit(words.units())};
}

FigureSpec massFigure(const Words& words)
{
    FigureSpec figure;
    figure.name = u"bead_mass_g"_s;
    figure.caption = Says::tr("Mass");
    figure.keyPadSentence = Says::tr("Key in the mass of the bead");
    figure.start = grams(2.3).value();
    inMasses(figure, words, true);
    wire<Mass>(figure, {grams(leastMass), grams(mostMass)}, words,
               std::function<Printed(Mass)>([words](Mass mass) { return printBead(mass, words); }), parseMass);
    return figure;
}

LaidBead beadOf(double length, double mass) { return {metres(length), Mass::from_value(mass)}; }

QString perLength(const LaidBead& bead, const Words& words) { return beadMassText(bead.mass / bead.length, words); }

FiguresScreen::Spec::Verdict judge(const std::vector<std::optional<double>>& values, const Words& words)
{
    if (!values[0] || !values[1])
        return {Says::tr("Lay it on card or foil, straight and at the usual push. Tare, then weigh."), true};
    const LaidBead bead = beadOf(*values[0], *values[1]);
    const double is = inMilligramsPerMillimetre(bead.mass / bead.length);
    if (is < leastPerLength || is > mostPerLength)
        return {Says::tr("%1 cannot be: look at length and mass again.").arg(perLength(bead, words)), false};
    return {Says::tr("This bead: %1").arg(perLength(bead, words)), true};
}

QString lotText(const BeadTrial& trial) { return Says::tr("Hardener %1").arg(inhand::shownLot(trial.hardenerLot)); }

} // namespace

Screen* makeLayBeadScreen(const Surroundings& around, const BeadTrial& trial, QWidget* parent,
                          std::function<void()> changeUnits, const std::function<void(const LaidBead&)>& laid)
{
    const Words& words = around.words;
    FiguresScreen::Spec spec;
    spec.name = u"screen_lay_bead"_s;
    spec.context = lotText(trial) + u" · "_s + Says::tr("bead %1").arg(trial.beads.size() + 1);
    spec.sentence = Says::tr("Lay a straight bead, measure and weigh it");
    spec.wayOn = Says::tr("Take this bead");
    spec.changeUnits = std::move(changeUnits);
    spec.ofARepair = false;
    spec.figures = {lengthFigure(words), massFigure(words)};
    if (around.instruments && around.instruments->scale().isOn())
        spec.takeOvers = {{u"take_bead"_s, Says::tr("Mass"), &around.instruments->scale(),
                           [](const LineReading& line) -> std::vector<std::pair<std::size_t, double>> {
                               if (!line.weight)
                                   return {};
                               return {{1, line.weight->value()}};
                           }}};
    spec.verdict = [words](const auto& values) { return judge(values, words); };
    spec.done = [laid](const std::vector<double>& values) { laid(beadOf(values[0], values[1])); };
    return new FiguresScreen(around, std::move(spec), parent);
}

BeadTrialScreen::BeadTrialScreen(const Surroundings& around, const BeadTrial& trial, QWidget* parent)
    : Screen(around, u"screen_bead_trial"_s, parent),
      m_trial(trial),
      m_found(beadCalibrated(trial.hardenerLot, trial.beads))
{
    if (trial.hardenerLot.isEmpty()) {
        buildFrame(tr("Bead of the hardener’s tube"), tr("Tell the hardener’s lot first"));
        answers()->stop()->hide();
        answers()->setWayOn({});
        content()->addWidget(label(u"bead_no_lot"_s, TextRole::Body,
                                   tr("A nozzle belongs to its tube. Which lot of hardener is open was not told: tell "
                                      "it where a batch is mixed, then calibrate.")));
        return;
    }
    buildFrame(lotText(trial), tr("What the beads come to"));
    answers()->stop()->hide();
    auto* cards = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    cards->setSpacing(px(sizes::gap));
    cards->addWidget(beadsCard(), 3);
    auto* side = new QVBoxLayout;
    side->setSpacing(px(sizes::gap));
    side->addWidget(verdictCard(), 1);
    side->addLayout(keys());
    cards->addLayout(side, 4);
    content()->addLayout(cards, 1);
    answers()->setWayOn(m_found ? tr("Keep it") : tr("Nothing to keep yet"));
    answers()->setWayOnEnabled(m_found.has_value());
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        if (m_found)
            Q_EMIT kept(*m_found);
    });
}

QWidget* BeadTrialScreen::beadsCard()
{
    auto* box = card(u"beads_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    const std::size_t count = m_trial.beads.size();
    const std::size_t first = count > shownBeads ? count - shownBeads : 0; // the newest are shown
    for (std::size_t i = first; i < count; ++i) {
        const LaidBead& bead = m_trial.beads[i];
        //: %1 is a number, %2 a length, %3 a mass, %4 a mass per length: "1: 100 mm, 2.31 g, 23.1 mg/mm"
        lines->addText(label(u"bead_%1"_s.arg(i), TextRole::Body,
                             tr("%1: %2, %3, %4")
                                 .arg(QString::number(i + 1), words().length(bead.length),
                                      instruments::weight(bead.mass, words()), perLength(bead, words()))));
    }
    return box;
}

QWidget* BeadTrialScreen::verdictCard()
{
    auto* box = card(u"bead_verdict_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    m_mean = label(u"bead_mean"_s, TextRole::Title, {}, Role::Ink, true);
    m_verdict = label(u"bead_verdict"_s, TextRole::Body);
    lines->addText(m_mean);
    lines->addText(m_verdict);
    if (!m_found) {
        tellFault(m_found.error().back());
        return box;
    }
    m_mean->setText(beadMassText(m_found->mean, words()));
    m_verdict->setText(tr("Scatter %1, at most %2. It holds for this lot until another is opened.")
                           .arg(words().percent(m_found->spread), words().percent(widestBeadSpread())));
    return box;
}

void BeadTrialScreen::tellFault(const Fault& fault)
{
    m_mean->setText(u"–"_s);
    if (fault.field == u"beads"_s) {
        m_verdict->setText(
            tr("%1 of at least %2 beads are laid.").arg(m_trial.beads.size()).arg(BeadCalibration::atLeast));
        return;
    }
    m_verdict->setRole(Role::Stop);
    if (fault.field == u"spread_percent"_s)
        m_verdict->setText(
            tr("The beads scatter by %1, at most %2 is of use. Lay them again, straight and at one push.")
                .arg(words().percent(Fraction::ofHundred(fault.value.toDouble())),
                     words().percent(widestBeadSpread())));
    else
        m_verdict->setText(words().fault(fault));
}

QLayout* BeadTrialScreen::keys()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    auto* another = new TapButton(theme(), u"another_bead"_s, TapButton::Kind::Plain, this);
    another->setTitle(tr("One more bead"));
    another->setTitleSize({5, 3.6});
    another->setFixedHeight(px(sizes::target));
    another->setEnabled(m_trial.beads.size() < mostBeads);
    connect(another, &TapButton::clicked, this, &BeadTrialScreen::anotherWanted);
    auto* anew = new HoldButton(theme(), u"beads_anew"_s, TapButton::Kind::Stop, this);
    anew->setTitle(tr("Begin anew"));
    anew->setSecondLine(tr("hold 1 s"));
    anew->setTitleSize({5, 3.6});
    anew->setFixedHeight(px(sizes::target));
    anew->setEnabled(!m_trial.beads.empty());
    connect(anew, &HoldButton::held, this, &BeadTrialScreen::beginAnew);
    row->addWidget(another, 1);
    row->addWidget(anew, 1);
    return row;
}

QString beadSource(const Surroundings& around, const ProductSheet& sheet)
{
    const auto calibrated = around.bench.bead();
    if (calibrated)
        //: %1 is a day, %2 a mass per length
        return Says::tr("Bead by the calibration of %1: %2")
            .arg(around.words.locale().toString(QDate::fromString(localDay(calibrated->at), Qt::ISODate),
                                                QLocale::ShortFormat),
                 beadMassText(calibrated->bead.mean, around.words));
    const QString figure = beadMassText(sheet.beadMass, around.words);
    return around.bench.anyBead() ? Says::tr("Bead by the sheet, not calibrated for this lot: %1").arg(figure)
                                  : Says::tr("Bead by the sheet: %1").arg(figure);
}

} // namespace strandbench
