// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/practice_flow.h"

#include "bench/settings.h"
#include "practice/generator.h"
#include "practice/panel_json.h"
#include "school/mark_screen.h"
#include "school/marks_screen.h"
#include "school/mix_by_eye_screen.h"
#include "school/panel_look_screen.h"
#include "school/practice_clock_screen.h"
#include "school/replay_screen.h"
#include "school/skills_paper.h"
#include "school/tour.h"

using namespace Qt::StringLiterals;

namespace strandbench {

PracticeFlow::PracticeFlow(const Bench& bench, PracticeFile file, QObject* parent)
    : QObject(parent), m_bench(bench), m_file(std::move(file)), m_time(bench.clock()), m_worker(bench.computing())
{}

void PracticeFlow::readOnce()
{
    if (std::exchange(m_read, true))
        return;
    ReadEntries read = m_file.load();
    m_entries = std::move(read.entries);
    m_faults = std::move(read.faults);
    if (m_entries.empty())
        m_at = At::Tour;
}

void PracticeFlow::go(At at)
{
    m_at = at;
    Q_EMIT changed();
}

Screen* PracticeFlow::makeScreen(const Surroundings& around, QWidget* parent)
{
    readOnce();
    m_person = around.settings.person;
    switch (m_at) {
    case At::Tour:
        return tourPage(
            around, m_tourPage, [this] { m_tourPage + 1 < tourPages() ? (++m_tourPage, go(At::Tour)) : go(At::Home); },
            [this] { go(At::Home); }, parent);
    case At::Home:
        return home(around, parent);
    case At::Look:
        return looking(around, parent);
    case At::Asking:
        return asking(around, parent);
    case At::Marks:
        return marks(around, parent);
    case At::Mark:
        return new MarkScreen(around, *m_run, m_marking->marks.at(m_mark), parent);
    case At::Replay:
        return new ReplayScreen(around, *m_run, m_marking->hand, parent);
    case At::Skills:
        return skills(around, parent);
    case At::Paper:
        return new SkillsPaperScreen(around, m_skillsOf, m_entries, parent);
    }
    Q_UNREACHABLE();
}

Screen* PracticeFlow::home(const Surroundings& around, QWidget* parent)
{
    PracticeHomeWays ways;
    ways.next = [this] { beginNext(); };
    ways.made = [this] { beginMade(); };
    if (m_run && !m_marking)
        ways.goOn = [this] { go(At::Asking); };
    ways.skills = [this] {
        m_skillsOf = m_person;
        go(At::Skills);
    };
    ways.tour = [this] {
        m_tourPage = 0;
        go(At::Tour);
    };
    Screen* screen = practiceHome(around, skillRecordOf(m_entries, m_person), ways, parent);
    if (!m_faults.empty())
        screen->showTrouble(around.words.fault(m_faults.front()),
                            tr("This line of the practice record is left out; it stays in its file."));
    return screen;
}

void PracticeFlow::beginNext()
{
    const PlanningSet& shop = m_bench.planning();
    std::vector<PanelToChoose> choices;
    for (const PracticePanel& each : builtInPanels())
        choices.push_back(
            {each.id, decide(each.truth, shop.table, shop.catalogue, shop.assumptions.decision).fill, each.traps});
    const auto next = nextPanel(skillRecordOf(m_entries, m_person), choices, workedBy(m_entries, m_person));
    if (next)
        begin(builtInPanels().at(*next));
    else
        beginMade();
}

void PracticeFlow::beginMade() { begin(generatedPanel(static_cast<quint64>(m_entries.size()) + 1)); }

void PracticeFlow::begin(const PracticePanel& panel)
{
    m_marking.reset();
    m_tried.clear();
    m_run.emplace(panel, m_bench.planning(), m_bench.clock().now());
    go(At::Look);
}

Screen* PracticeFlow::looking(const Surroundings& around, QWidget* parent)
{
    auto* screen = new PanelLookScreen(around, m_run->panel(), m_tried, tr("To the question"), parent);
    connect(screen, &PanelLookScreen::wayOnTapped, this, [this] { go(At::Asking); });
    return screen;
}

Screen* PracticeFlow::asking(const Surroundings& around, QWidget* parent)
{
    switch (m_run->asks()) {
    case PracticeAsks::Mix:
        return mixing(around, parent);
    case PracticeAsks::Spread:
    case PracticeAsks::Sand:
        return clocking(around, parent);
    default:
        return askOf(around, *m_run, {[this] { go(At::Look); }, [this] { next(); }, [this] { Q_EMIT unitsWanted(); }},
                     parent);
    }
}

void PracticeFlow::next()
{
    if (m_run->asks() == PracticeAsks::Done)
        markIt();
    else
        go(At::Asking);
}

Screen* PracticeFlow::mixing(const Surroundings& around, QWidget* parent)
{
    auto* screen = new MixByEyeScreen(around, practiceContext(*m_run, around.words), parent);
    connect(screen, &MixByEyeScreen::mixed, this, [this](Length puddle, Length bead) {
        m_run->mix(puddle, bead);
        m_time.restart();
        next();
    });
    return screen;
}

Screen* PracticeFlow::clocking(const Surroundings& around, QWidget* parent)
{
    auto* screen = new PracticeClockScreen(around, *m_run, m_time, parent);
    connect(screen, &PracticeClockScreen::edgesCleared, this, [this](Duration since) {
        m_run->clearEdges(since);
        next();
    });
    connect(screen, &PracticeClockScreen::sanded, this, [this](Duration since) {
        m_run->sand(since);
        next();
    });
    connect(screen, &PracticeClockScreen::anotherWanted, this, [this] {
        m_run->mixAnother();
        next();
    });
    return screen;
}

void PracticeFlow::markIt()
{
    m_worker.ask([this, worked = m_run->repair().id, person = m_person, panel = m_run->panel(),
                  attempt = m_run->attempt(), shop = m_bench.planning()] {
        const Marking marking = mark(panel, modelAnswer(panel.truth, shop), attempt, shop);
        return [this, worked, person, panel, marking] {
            m_entries.push_back(entryOf(panel.id, person, m_bench.clock().now().utcMs, marking));
            const auto refused = m_file.add(m_entries.back());
            if (m_run->repair().id == worked) // and not another panel, begun meanwhile
                m_marking = marking;
            if (m_at == At::Marks)
                Q_EMIT changed();
            if (refused)
                Q_EMIT troubled(tr("The practice record was not written: %1").arg(*refused),
                                tr("The marks hold until the program is closed."));
        };
    });
    go(At::Marks);
}

Screen* PracticeFlow::marks(const Surroundings& around, QWidget* parent)
{
    auto* screen = new MarksScreen(around, m_run->panel(), m_marking, parent);
    connect(screen, &MarksScreen::markTapped, this, [this](std::size_t index) {
        m_mark = index;
        go(At::Mark);
    });
    connect(screen, &MarksScreen::replayTapped, this, [this] { go(At::Replay); });
    connect(screen, &MarksScreen::doneTapped, this, [this] { go(At::Home); });
    return screen;
}

Screen* PracticeFlow::skills(const Surroundings& around, QWidget* parent)
{
    auto* screen = new SkillsScreen(around, m_skillsOf, m_entries, parent);
    connect(screen, &SkillsScreen::personWanted, this, [this](const QString& person) {
        m_skillsOf = person;
        go(At::Skills);
    });
    connect(screen, &SkillsScreen::paperWanted, this, [this] { go(At::Paper); });
    connect(screen, &SkillsScreen::panelWanted, this, &PracticeFlow::beginNext);
    return screen;
}

void PracticeFlow::act(const std::vector<Payload>& payloads)
{
    if (!m_run)
        return;
    for (const Payload& each : payloads)
        if (const auto* answered = std::get_if<Answered>(&each))
            if (m_run->answer(*answered, m_bench.clock().now()))
                return; // what does not follow changes nothing
    next();
}

bool PracticeFlow::back()
{
    switch (m_at) {
    case At::Home:
        return false;
    case At::Mark:
    case At::Replay:
        go(At::Marks);
        return true;
    case At::Paper:
        go(At::Skills);
        return true;
    case At::Look:
    case At::Tour:
    case At::Asking:
    case At::Marks:
    case At::Skills:
        break;
    }
    go(At::Home);
    return true;
}

} // namespace strandbench
