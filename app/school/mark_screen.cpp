// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/mark_screen.h"

#include "cure/solve.h"
#include "pictures/panel_view.h"
#include "pictures/puddle_picture.h"
#include "pictures/section_picture.h"
#include "pictures/step_picture.h"
#include "screens/job/cure_chart.h"
#include "screens/job/picture_labels.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "words/evidence_words.h"
#include "words/practice_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// More than these do not fit; the consequence and the rule name those that matter.
constexpr std::size_t mostNamed = 6;

/// The step that the consequence names first; empty where it names none.
QString stepIn(const Consequence& consequence)
{
    for (const Argument& each : consequence.what.arguments)
        if (const auto* code = std::get_if<QString>(&each))
            return *code;
    return {};
}

} // namespace

MarkScreen::MarkScreen(const Surroundings& around, const PracticeRun& run, const Mark& mark, QWidget* parent)
    : Screen(around, u"screen_practice_mark"_s, parent), m_mark(mark), m_worker(around.bench.computing())
{
    buildFrame(tr("Practice panel"), decisionTold(mark, words()));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the marks"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    buildWords();
    buildPicture(run);
}

void MarkScreen::addDecision(FitColumn& lines)
{
    const bool fits = std::max(m_mark.given.size(), m_mark.expected.size()) <= mostNamed;
    switch (m_mark.judged) {
    case Judged::Wrong:
        if (!fits)
            break;
        //: what the apprentice decided
        lines.addText(label(u"mark_given"_s, TextRole::Body, tr("You: %1").arg(givenTold(m_mark, words()))));
        lines.addText(label(u"mark_expected"_s, TextRole::Body, tr("Right: %1").arg(expectedTold(m_mark, words())),
                            Role::Go, true));
        break;
    case Judged::Right:
        lines.addText(label(u"mark_given"_s, TextRole::Body,
                            tr("Right: %1").arg(fits ? givenTold(m_mark, words()) : decisionTold(m_mark, words())),
                            Role::Go, true));
        break;
    case Judged::NotReached:
        lines.addText(label(u"mark_given"_s, TextRole::Body, tr("It was not reached.")));
        break;
    }
}

void MarkScreen::buildWords()
{
    Card* box = card(u"mark_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(2), px(3), px(2));
    addDecision(*lines);
    if (m_mark.consequence) {
        lines->addText(label(u"mark_consequence"_s, TextRole::Title, consequenceTold(m_mark.consequence->what, words()),
                             Role::Ink, true));
        const QString sheet = sheetsWordTold(*m_mark.consequence, words());
        if (!sheet.isEmpty())
            lines->addText(label(u"mark_sheet"_s, TextRole::Body, sheet));
    }
    if (const QString rule = ruleTold(m_mark, words()); !rule.isEmpty())
        lines->addText(label(u"mark_rule"_s, TextRole::Body, rule, Role::MutedInk));
    content()->addWidget(box, 1);
}

void MarkScreen::buildPicture(const PracticeRun& run)
{
    if (!m_mark.consequence)
        return;
    const Consequence& consequence = *m_mark.consequence;
    QWidget* picture = nullptr;
    const bool planned = run.attempt().fill.value_or(false) && run.own().fill();
    if (consequence.cureCase) {
        picture = curve();
    } else if (consequence.picture == ConsequencePicture::Steps) {
        auto* step = new StepPicture(theme(), u"mark_picture"_s, this);
        step->setStep(stepIn(consequence), SectionDrawing::of(run.attempt().found));
        picture = step;
    } else if (consequence.picture == ConsequencePicture::Board && !run.attempt().lifts.empty()) {
        auto* board = new PuddlePicture(theme(), u"mark_picture"_s, this);
        const MixedBatch& batch = run.attempt().lifts.front().batches.front();
        Mix mix;
        mix.puddle = batch.puddle;
        mix.bead = batch.bead;
        board->setMix(mix, puddleLabels(mix, words()));
        picture = board;
    } else if (consequence.picture == ConsequencePicture::Section && planned) {
        auto* section = new SectionPicture(theme(), u"mark_picture"_s, this);
        const RepairPlan laid = planAsLaid(run.attempt(), run.own(), around().bench.planning());
        SectionDrawing drawing = SectionDrawing::of(run.own().assessment, laid, around().bench.assumptions());
        drawing.progress = {true, int(laid.lifts.size()), false, laid.finish.thickness > Length()};
        section->setDrawing(drawing, sectionLabels(run.own().assessment, laid, words()));
        picture = section;
    } else {
        auto* panel = new PanelView(theme(), u"mark_picture"_s, this);
        panel->setShown(PanelSide::Front, run.panel().shown);
        picture = panel;
    }
    picture->setAccessibleName(consequenceTold(consequence.what, words()));
    content()->addWidget(picture, 1);
}

QWidget* MarkScreen::curve()
{
    m_chart =
        new CureChart(theme(), words(),
                      {tr("hottest"), tr("face"), tr("cured"), tr("gel"), tr("sands"), tr("limit"), tr("now")}, this);
    m_chart->setObjectName(u"mark_picture"_s);
    m_worker.ask([this, cureCase = *m_mark.consequence->cureCase] {
        const CureOutcome outcome = solveCure(cureCase);
        return [this, outcome] {
            if (outcome)
                m_chart->setResult(*outcome, std::nullopt);
        };
    });
    return m_chart;
}

} // namespace strandbench
