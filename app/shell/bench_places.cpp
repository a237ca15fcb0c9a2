// SPDX-License-Identifier: GPL-3.0-or-later
// Which screen stands for which place, and how screens lead to each other.
#include "screens/job/answers_screen.h"
#include "screens/job/assess.h"
#include "screens/job/bead_screen.h"
#include "screens/job/curve_screen.h"
#include "screens/job/home_screen.h"
#include "screens/job/in_hand.h"
#include "screens/stock/lot_list_screen.h"
#include "screens/stock/lot_page_screen.h"
#include "screens/job/lot_screen.h"
#include "screens/job/measure_screens.h"
#include "screens/job/mixes_screen.h"
#include "screens/stock/pat_screen.h"
#include "screens/job/plan_screen.h"
#include "screens/record/record_screen.h"
#include "screens/set_up/set_up_record.h"
#include "screens/paper/sheet_screen.h"
#include "screens/job/take_in_screen.h"
#include "screens/record/today_screen.h"
#include "shell/bench_window.h"

namespace strandbench {

Screen* BenchWindow::makeScreen()
{
    const Repair* repair = current();
    switch (m_place) {
    case Place::Home:
        return makeHome();
    case Place::JobNumber:
        return makeJobNumber();
    case Place::Panel:
        return makePanelScreen(
            *m_around, m_job, [this](const QString& panel) { takeIn(panel); }, this);
    case Place::Person:
        return makePersonScreen(
            *m_around, [this](const QString& name) { choosePerson(name); }, this);
    case Place::SetUp:
        return makeSetUp();
    case Place::Calibrate:
        return makeCalibrate();
    case Place::Why:
        return new WhyScreen(*m_around, *repair,
                             repair->plan && !repair->replanDue() ? *repair->plan : m_parts.bench.plan(*repair), this);
    case Place::StockNotes:
        return makeStockNotes(*repair);
    case Place::Practice:
        return makePractice();
    case Place::HowToTell:
        return makeHowToTell(*repair);
    case Place::Bead:
        return makeBeadScreen(*m_around, *repair, *nextStep(*repair).batch, this, [this] { changeUnits(); });
    case Place::Weigh:
        return makeWeigh(*repair);
    case Place::BeadTrial:
        return makeBeadTrial();
    case Place::Curve:
        return new CurveScreen(*m_around, *repair, *repair->run(m_curveOf), this);
    case Place::Answers:
        return makeAnswersScreen(*m_around, *repair, ways(), this);
    case Place::Lots:
        return makeLots(*repair);
    case Place::ReadAgain:
        return makeReadBeforeMixScreen(*m_around, *repair, *nextStep(*repair).batch, this, [this] { changeUnits(); });
    case Place::ReadWhileCuring:
        return makeReadWhileCuringScreen(*m_around, *repair, m_curveOf, this, [this] { changeUnits(); });
    case Place::Mixes:
        return makeMixes();
    case Place::Today:
        return makeToday();
    case Place::Record:
        return makeRecord();
    case Place::Sheet:
        return new SheetScreen(*m_around, m_recordOf, this);
    case Place::LotList:
        return makeLotList();
    case Place::LotPage:
        return makeLotPage();
    case Place::Pat:
        return makePat();
    case Place::Forget:
        return makeForgetScreen(
            *m_around, m_lot,
            [this](const LotForgotten& act) { askSupervisor(lotSubject(m_lot), act, Place::LotPage); }, this);
    case Place::Air:
    case Place::Dew:
    case Place::Vapour:
    case Place::Fire:
        return makeAir();
    case Place::Repair:
        return makeRepairScreen(*repair);
    case Place::Pin:
    case Place::OverrideWhy:
    case Place::CorrectWhich:
    case Place::CorrectText:
    case Place::BenchDay:
    case Place::OldPin:
    case Place::NewPin:
    case Place::NewPinAgain:
        return makeSupervisors();
    case Place::Product:
    case Place::ProductKind:
    case Place::ProductEdit:
    case Place::ProductPick:
    case Place::ProductFolder:
    case Place::ProductFaults:
        return makeProducts();
    case Place::Find:
    case Place::Found:
    case Place::LotTrace:
    case Place::RecallFolder:
        return makeFinding();
    case Place::Review:
    case Place::ReviewBy:
    case Place::ReviewValue:
    case Place::Closing:
    case Place::ReturnWhy:
    case Place::ReturnText:
    case Place::Timeline:
    case Place::RepairLots:
    case Place::DayFiles:
        return makeReview();
    case Place::Figures:
    case Place::Figure:
    case Place::FigureLot:
        return makeFigures();
    case Place::Stock:
    case Place::StockLotPage:
    case Place::StockProduct:
    case Place::StockLotNumber:
    case Place::StockBookIn:
    case Place::StockDated:
    case Place::StockBestBefore:
    case Place::StockCount:
    case Place::StockChangeWhy:
    case Place::StockChangeBy:
    case Place::StockEndWhy:
    case Place::StockThrownAway:
    case Place::StockMoved:
    case Place::StockProbe:
    case Place::StockMoves:
    case Place::Reorder:
    case Place::ReorderLevel:
        return makeStock();
    case Place::KeepFolder:
    case Place::LogPick:
    case Place::LogFolder:
    case Place::KeepWait:
    case Place::Kept:
    case Place::KeepPin:
        return makeKeeping();
    case Place::Help:
    case Place::Glossary:
    case Place::Legend:
    case Place::QuickCard:
        return makeHelp();
    default:
        break;
    }
    return makeBeside(*repair);
}

Screen* BenchWindow::makeHowToTell(const Repair& repair)
{
    const auto soFar = m_foundBy.first == repair.id ? m_foundBy.second : std::vector<FoundBy>();
    auto* screen = new HowToTellScreen(*m_around, repair, m_toldQuestion, soFar, this);
    connect(screen, &HowToTellScreen::foundByChosen, this, [this, id = repair.id](const std::vector<FoundBy>& foundBy) {
        m_foundBy = {id, foundBy};
    });
    return screen;
}

Screen* BenchWindow::makeHome()
{
    auto* home = new HomeScreen(*m_around, this);
    connect(home, &HomeScreen::repairTapped, this, &BenchWindow::showRepair);
    connect(home, &HomeScreen::todayTapped, this, [this] { place(Place::Today); });
    connect(home, &HomeScreen::stockTapped, this, [this] {
        m_stock = {};
        place(Place::Stock);
    });
    connect(home, &HomeScreen::setUpTapped, this, [this] {
        m_setUp = {};
        place(Place::SetUp);
    });
    connect(home, &HomeScreen::personTapped, this, [this] {
        m_afterPerson = Place::Home;
        place(Place::Person);
    });
    connect(home, &HomeScreen::takeInTapped, this, &BenchWindow::askJob);
    if (m_parts.practice) {
        home->offerPractice();
        connect(home, &HomeScreen::practiceTapped, this, [this] { place(Place::Practice); });
    }
    return home;
}

void BenchWindow::askJob()
{
    m_job.clear();
    m_afterPerson = Place::JobNumber;
    place(m_parts.settings.person.isEmpty() ? Place::Person : Place::JobNumber);
}

Screen* BenchWindow::makeJobNumber()
{
    auto* screen = new JobNumberScreen(*m_around, m_job, this);
    connect(screen, &JobNumberScreen::numberGiven, this, [this](const QString& number) {
        m_job = number;
        place(Place::Panel);
    });
    return screen;
}

Screen* BenchWindow::makeSetUp()
{
    SetUpScreen* screen = makeSetUpScreen(*m_around, m_setUp, m_parts.player, m_parts.keeper, this);
    if (auto* record = qobject_cast<SetUpRecordScreen*>(screen))
        connect(record, &SetUpRecordScreen::keepingWanted, this, &BenchWindow::beginKeeping);
    connect(screen, &SetUpScreen::placeWanted, this, [this](const SetUpPlace& wanted) {
        m_setUp = wanted;
        place(Place::SetUp);
    });
    connect(screen, &SetUpScreen::pinWanted, this, [this] {
        if (m_parts.bench.door())
            place(m_parts.bench.door()->isSet() ? Place::OldPin : Place::NewPin);
    });
    connect(screen, &SetUpScreen::beadWanted, this,
            [this] { beginBead(inhand::lotInUse(m_parts.settings, hardenerKey), Place::SetUp); });
    connect(screen, &SetUpScreen::productWanted, this, &BenchWindow::showProduct);
    connect(screen, &SetUpScreen::calibrateWanted, this, [this] { place(Place::Calibrate); });
    connect(screen, &SetUpScreen::assumptionsChanged, this, &BenchWindow::changeAssumptions);
    connect(screen, &SetUpScreen::settingsChanged, this, [this](const Settings& wanted) {
        if (wanted.footSwitchKey != m_parts.settings.footSwitchKey)
            m_footSwitch.begin(m_parts.bench.clock().now());
        m_setUp.detail.clear();
        changeSettings(wanted, Place::SetUp);
    });
    return screen;
}

Screen* BenchWindow::makeCalibrate()
{
    auto* screen = new CalibrateScreen(*m_around, this);
    connect(screen, &CalibrateScreen::calibrated, this, [this](double ppmm) {
        Settings wanted = m_parts.settings;
        wanted.pixelsPerMillimetre = ppmm;
        changeSettings(wanted, Place::SetUp);
    });
    return screen;
}

Screen* BenchWindow::makeMixes()
{
    auto* screen = new MixesScreen(*m_around, this);
    connect(screen, &MixesScreen::repairTapped, this, &BenchWindow::showRepair);
    return screen;
}

Screen* BenchWindow::makeLots(const Repair& repair)
{
    auto* screen = new LotScreen(*m_around, repair, *nextStep(repair).batch, std::exchange(m_askedLot, {}), this);
    connect(screen, &LotScreen::settingsWanted, this, [this](const Settings& wanted) { remember(wanted); });
    connect(screen, &LotScreen::pageWanted, this, [this](const LotOfProduct& lot) {
        m_lot = lot;
        m_afterLot = Place::Lots;
        place(Place::LotPage);
    });
    return screen;
}

Screen* BenchWindow::makeToday()
{
    auto* screen = new TodayScreen(*m_around, this);
    connect(screen, &TodayScreen::repairTapped, this, [this](const QUuid& id) { showRecord(id, Place::Today); });
    connect(screen, &TodayScreen::takeInTapped, this, &BenchWindow::askJob);
    connect(screen, &TodayScreen::findTapped, this, [this] {
        m_finding = {};
        place(Place::Find);
    });
    connect(screen, &TodayScreen::reviewTapped, this, [this] {
        m_review.wish = {};
        reviewDay(localDay(m_parts.bench.clock().now()));
    });
    connect(screen, &TodayScreen::benchTapped, this, [this] { place(Place::BenchDay); });
    connect(screen, &TodayScreen::lotsTapped, this, [this] { place(Place::LotList); });
    return screen;
}

Screen* BenchWindow::makeLotList()
{
    auto* screen = new LotListScreen(*m_around, this);
    connect(screen, &LotListScreen::lotTapped, this, [this](const LotOfProduct& lot) {
        m_lot = lot;
        m_afterLot = Place::LotList;
        place(Place::LotPage);
    });
    return screen;
}

Screen* BenchWindow::makeLotPage()
{
    auto* screen = new LotPageScreen(*m_around, m_lot, this);
    connect(screen, &LotPageScreen::patWanted, this, [this] { place(Place::Pat); });
    connect(screen, &LotPageScreen::beadWanted, this, [this] { beginBead(m_lot.hardenerLot, Place::LotPage); });
    connect(screen, &LotPageScreen::forgetWanted, this, [this] { place(Place::Forget); });
    return screen;
}

Screen* BenchWindow::makePat()
{
    auto* screen = new PatScreen(*m_around, m_lot, this);
    connect(screen, &PatScreen::told, this, [this](const Payload& act) {
        tellOfLot(act, std::holds_alternative<PatGelled>(act) ? Place::LotPage : Place::Pat);
    });
    return screen;
}

void BenchWindow::tellOfLot(const Payload& payload, Place after)
{
    write(lotSubject(m_lot), payload, {}, [this, after] { place(after); });
}

Screen* BenchWindow::makeRecord()
{
    auto* screen = new RecordScreen(*m_around, m_recordOf, this);
    connect(screen, &RecordScreen::sheetWanted, this, [this] { place(Place::Sheet); });
    connect(screen, &RecordScreen::timelineWanted, this, [this] { place(Place::Timeline); });
    connect(screen, &RecordScreen::lotsWanted, this, [this] { place(Place::RepairLots); });
    connect(screen, &RecordScreen::closingWanted, this, [this] { place(Place::Closing); });
    return screen;
}

Screen* BenchWindow::makeRepairScreen(const Repair& repair)
{
    return m_look ? lookScreenOf(*m_around, repair, *m_look, ways(), this) : screenOf(*m_around, repair, ways(), this);
}

Ways BenchWindow::ways()
{
    Ways ways;
    ways.present = [this] {
        m_look.reset();
        place(Place::Repair);
    };
    ways.look = [this](const Look& look) {
        m_look = look;
        place(Place::Repair);
    };
    ways.howToTell = [this](Question question) {
        m_toldQuestion = question;
        place(Place::HowToTell);
    };
    if (m_foundBy.first == m_repair)
        ways.foundBy = m_foundBy.second;
    ways.why = [this] { place(Place::Why); };
    ways.changeUnits = [this] { changeUnits(); };
    ways.overrideStops = [this](const std::vector<QString>& stops) {
        m_overriding = stops;
        place(Place::OverrideWhy);
    };
    ways.home = [this] { showHome(); };
    ways.beadAsLaid = [this] { place(Place::Bead); };
    ways.weigh = [this](const std::optional<Mass>& filler) {
        m_weighed = filler;
        place(Place::Weigh);
    };
    ways.stock = [this] { place(Place::StockNotes); };
    ways.answers = [this] { place(Place::Answers); };
    ways.curve = [this](BatchRef batch) {
        m_curveOf = batch;
        place(Place::Curve);
    };
    ways.readWhileCuring = [this](BatchRef batch) {
        m_curveOf = batch;
        place(Place::ReadWhileCuring);
    };
    ways.photos = [this] { place(Place::Photos); };
    ways.photo = [this](PhotoMoment moment) { choosePhoto(moment, Place::Repair); };
    ways.harm = [this] { place(Place::Harm); };
    ways.notes = [this] { place(Place::Notes); };
    ways.lots = [this](BatchRef) { place(Place::Lots); };
    ways.whichLot = [this](const QString& lot) {
        m_askedLot = lot;
        place(Place::Lots);
    };
    ways.remember = [this](const Settings& wanted) {
        remember(wanted, m_place == Place::Repair ? std::optional(Place::Repair) : std::nullopt);
    };
    ways.readAgain = [this] { place(Place::ReadAgain); };
    ways.repair = [this](const QUuid& id) { showRepair(id); };
    ways.rework = [this] { beginRework(); };
    return ways;
}

} // namespace strandbench
