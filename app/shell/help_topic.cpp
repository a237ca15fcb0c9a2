// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/help_topic.h"

#include <QHash>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

// No default: a place that is added without its topic does not compile where warnings are errors.
HelpTopic topicOf(Place place)
{
    switch (place) {
    case Place::Home:
    case Place::Mixes:
        return HelpTopic::Home;
    case Place::JobNumber:
    case Place::Panel:
        return HelpTopic::TakeIn;
    case Place::Person:
        return HelpTopic::Person;
    case Place::SetUp:
    case Place::Calibrate:
        return HelpTopic::SetUp;
    case Place::Repair: // of none that is open
    case Place::Why:
    case Place::Answers:
    case Place::StockNotes:
        return HelpTopic::Plan;
    case Place::HowToTell:
        return HelpTopic::AskMaterial;
    case Place::Bead:
    case Place::BeadTrial:
        return HelpTopic::Mix;
    case Place::Weigh:
        return HelpTopic::Weigh;
    case Place::Curve:
        return HelpTopic::Cure;
    case Place::Lots:
    case Place::LotList:
    case Place::LotPage:
    case Place::Pat:
    case Place::Forget:
        return HelpTopic::Lots;
    case Place::ReadAgain:
    case Place::ReadWhileCuring:
        return HelpTopic::AskReading;
    case Place::Today:
    case Place::BenchDay:
        return HelpTopic::Today;
    case Place::Record:
    case Place::Timeline:
    case Place::RepairLots:
        return HelpTopic::Record;
    case Place::Sheet:
    case Place::DayFiles:
    case Place::RecallFolder:
    case Place::QuickCard:
        return HelpTopic::Paper;
    case Place::Practice:
        return HelpTopic::Practice;
    case Place::Air:
    case Place::Dew:
    case Place::Vapour:
    case Place::Fire:
        return HelpTopic::Air;
    case Place::Pin:
    case Place::OverrideWhy:
    case Place::CorrectWhich:
    case Place::CorrectText:
    case Place::OldPin:
    case Place::NewPin:
    case Place::NewPinAgain:
    case Place::KeepPin:
        return HelpTopic::Supervisor;
    case Place::Product:
    case Place::ProductKind:
    case Place::ProductEdit:
    case Place::ProductPick:
    case Place::ProductFolder:
    case Place::ProductFaults:
        return HelpTopic::Products;
    case Place::Review:
    case Place::ReviewBy:
    case Place::ReviewValue:
    case Place::Closing:
    case Place::ReturnWhy:
    case Place::ReturnText:
        return HelpTopic::Review;
    case Place::Figures:
    case Place::Figure:
    case Place::FigureLot:
        return HelpTopic::Figures;
    case Place::Find:
    case Place::Found:
    case Place::LotTrace:
        return HelpTopic::Find;
    case Place::Stock:
    case Place::StockLotPage:
    case Place::StockMoves:
    case Place::Reorder:
    case Place::ReorderLevel:
        return HelpTopic::Stock;
    case Place::StockProduct:
    case Place::StockLotNumber:
    case Place::StockBookIn:
    case Place::StockDated:
    case Place::StockBestBefore:
        return HelpTopic::StockBookIn;
    case Place::StockCount:
    case Place::StockChangeWhy:
    case Place::StockChangeBy:
    case Place::StockEndWhy:
    case Place::StockThrownAway:
    case Place::StockMoved:
    case Place::StockProbe:
        return HelpTopic::StockChange;
    case Place::KeepFolder:
    case Place::LogPick:
    case Place::LogFolder:
    case Place::KeepWait:
    case Place::Kept:
        return HelpTopic::Keeping;
    case Place::Ask:
        return HelpTopic::Ask;
    case Place::ParkWhy:
    case Place::ParkTo:
        return HelpTopic::Parked;
    case Place::Harm:
        return HelpTopic::Hazards;
    case Place::Photos:
    case Place::PhotoPick:
    case Place::PhotoFolder:
    case Place::Camera:
        return HelpTopic::Photos;
    case Place::Notes:
    case Place::NoteText:
        return HelpTopic::Notes;
    case Place::Help:
    case Place::Glossary:
    case Place::Legend:
        return HelpTopic::Home; // nobody asks for help there: its key leads back
    }
    Q_UNREACHABLE();
}

HelpTopic topicOf(Question question)
{
    switch (question) {
    case Question::Substrate:
    case Question::Core:
        return HelpTopic::AskMaterial;
    case Question::DamageKind:
    case Question::Weld:
    case Question::AdhesiveCured:
    case Question::RearAccess:
        return HelpTopic::AskDamage;
    case Question::Size:
        return HelpTopic::AskSize;
    case Question::Surface:
    case Question::Zone:
    case Question::Moisture:
        return HelpTopic::AskSurface;
    case Question::Reading:
        return HelpTopic::AskReading;
    }
    Q_UNREACHABLE();
}

std::optional<HelpTopic> topicOfStep(const QString& code)
{
    static const QHash<QString, HelpTopic> topics{
        {u"gear_on"_s, HelpTopic::Gear},
        {u"own_tools"_s, HelpTopic::Gear},
        {u"wash"_s, HelpTopic::Clean},
        {u"degrease"_s, HelpTopic::Clean},
        {u"degrease_little"_s, HelpTopic::Clean},
        {u"flash_off"_s, HelpTopic::Clean},
        {u"dry"_s, HelpTopic::Clean},
        {u"dust_off"_s, HelpTopic::Clean},
        {u"wipe_metal"_s, HelpTopic::Clean},
        {u"flash_off_metal"_s, HelpTopic::Clean},
        {u"strip_paint"_s, HelpTopic::OpenUp},
        {u"cut_to_sound"_s, HelpTopic::OpenUp},
        {u"find_cracks"_s, HelpTopic::OpenUp},
        {u"stop_drill"_s, HelpTopic::OpenUp},
        {u"squeeze_out_off"_s, HelpTopic::OpenUp},
        {u"dress_weld"_s, HelpTopic::OpenUp},
        {u"bevel"_s, HelpTopic::Bevel},
        {u"bevel_both"_s, HelpTopic::Bevel},
        {u"open_gouge"_s, HelpTopic::Bevel},
        {u"bevel_upper_panel"_s, HelpTopic::Bevel},
        {u"abrade_back"_s, HelpTopic::BackUp},
        {u"backing_behind"_s, HelpTopic::BackUp},
        {u"backing_through"_s, HelpTopic::BackUp},
        {u"dam"_s, HelpTopic::BackUp},
        {u"abrade_80"_s, HelpTopic::Abrade},
        {u"abrade_80_metal"_s, HelpTopic::Abrade},
        {u"read_panel"_s, HelpTopic::AskReading},
        {u"read_panel_metal"_s, HelpTopic::AskReading},
        {u"guide_coat"_s, HelpTopic::Contour},
        {u"sand_180"_s, HelpTopic::Contour},
        {u"sand_320"_s, HelpTopic::Contour},
        {u"dust_off_finish"_s, HelpTopic::Contour},
        {u"inspect"_s, HelpTopic::Inspect},
        {u"cure_before_primer"_s, HelpTopic::Inspect},
    };
    if (const auto& tests = handOverTests(); std::ranges::find(tests, code) != tests.end())
        return HelpTopic::HandOver;
    const auto found = topics.constFind(code);
    return found == topics.cend() ? std::nullopt : std::optional(*found);
}

namespace {

/// A step that a later book of steps may hold without a topic of its own has that of its stage.
HelpTopic topicAt(const std::vector<Step>& steps, int index, HelpTopic otherwise)
{
    return topicOfStep(steps.at(static_cast<std::size_t>(index)).code).value_or(otherwise);
}

} // namespace

HelpTopic topicOf(const NextStep& next, const Repair& repair, const QString& screen)
{
    switch (next.station) {
    case Station::Assess:
        return topicOf(*next.question);
    case Station::Decide:
        return screen == u"screen_refusal"_s ? HelpTopic::Stop : HelpTopic::Plan;
    case Station::Prepare:
        return topicAt(repair.plan->prep, next.index, HelpTopic::Clean);
    case Station::Mix:
        return HelpTopic::Mix;
    case Station::Spread:
        return HelpTopic::Spread;
    case Station::Wait:
        return HelpTopic::Cure;
    case Station::Sand:
        return HelpTopic::Sand;
    case Station::Turn:
        return HelpTopic::Turn;
    case Station::Finish:
        return topicAt(repair.plan->finishing, next.index, HelpTopic::Contour);
    case Station::HandOver:
        return HelpTopic::HandOver;
    case Station::Done:
        return HelpTopic::Closed;
    case Station::Parked:
        return HelpTopic::Parked;
    case Station::Returned:
        return HelpTopic::Returned;
    }
    Q_UNREACHABLE();
}

HelpTopic topicOf(const Look& look, const Repair& repair)
{
    switch (look.at) {
    case Look::At::Question:
        return topicOf(look.question);
    case Look::At::Plan:
        return HelpTopic::Plan;
    case Look::At::Step:
        break;
    }
    switch (look.stage) {
    case Stage::Prepare:
        return topicAt(repair.plan->prep, look.index, HelpTopic::Clean);
    case Stage::Finish:
        return topicAt(repair.plan->finishing, look.index, HelpTopic::Contour);
    case Stage::HandOver:
        break;
    }
    return HelpTopic::HandOver;
}

} // namespace strandbench
