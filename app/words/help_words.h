// SPDX-License-Identifier: GPL-3.0-or-later
// Help in the shop's words: of every topic what it is for, how it goes, what goes wrong, where a limit comes from. No
// figures: those that the program uses stand where they are used.
#pragma once

#include "quantity/codes.h"

#include <QString>

namespace strandbench {

enum class HelpTopic {
    Home,
    TakeIn,
    Person,
    AskMaterial,
    AskDamage,
    AskSize,
    AskSurface,
    AskReading,
    Plan,
    Stop,
    Gear,
    Clean,
    OpenUp, ///< to sound material: stripping, cutting, drilling
    Bevel,
    BackUp,
    Abrade,
    Mix,
    Weigh,
    Lots,
    Spread,
    Cure,
    Sand,
    Turn,
    Contour,
    Inspect,
    HandOver,
    Closed,
    Parked,
    Returned,
    Ask,
    Hazards,
    Photos,
    Notes,
    Today,
    Record,
    Paper,
    Air,
    Supervisor,
    Review,
    Figures,
    Find,
    Stock,
    StockBookIn,
    StockChange,
    Products,
    SetUp,
    Keeping,
    Practice,
};
template <> struct Codes<HelpTopic> {
    static constexpr std::array<std::pair<HelpTopic, const char*>, 48> table{{
        {HelpTopic::Home, "home"},
        {HelpTopic::TakeIn, "take_in"},
        {HelpTopic::Person, "person"},
        {HelpTopic::AskMaterial, "ask_material"},
        {HelpTopic::AskDamage, "ask_damage"},
        {HelpTopic::AskSize, "ask_size"},
        {HelpTopic::AskSurface, "ask_surface"},
        {HelpTopic::AskReading, "ask_reading"},
        {HelpTopic::Plan, "plan"},
        {HelpTopic::Stop, "stop"},
        {HelpTopic::Gear, "gear"},
        {HelpTopic::Clean, "clean"},
        {HelpTopic::OpenUp, "open_up"},
        {HelpTopic::Bevel, "bevel"},
        {HelpTopic::BackUp, "back_up"},
        {HelpTopic::Abrade, "abrade"},
        {HelpTopic::Mix, "mix"},
        {HelpTopic::Weigh, "weigh"},
        {HelpTopic::Lots, "lots"},
        {HelpTopic::Spread, "spread"},
        {HelpTopic::Cure, "cure"},
        {HelpTopic::Sand, "sand"},
        {HelpTopic::Turn, "turn"},
        {HelpTopic::Contour, "contour"},
        {HelpTopic::Inspect, "inspect"},
        {HelpTopic::HandOver, "hand_over"},
        {HelpTopic::Closed, "closed"},
        {HelpTopic::Parked, "parked"},
        {HelpTopic::Returned, "returned"},
        {HelpTopic::Ask, "ask"},
        {HelpTopic::Hazards, "hazards"},
        {HelpTopic::Photos, "photos"},
        {HelpTopic::Notes, "notes"},
        {HelpTopic::Today, "today"},
        {HelpTopic::Record, "record"},
        {HelpTopic::Paper, "paper"},
        {HelpTopic::Air, "air"},
        {HelpTopic::Supervisor, "supervisor"},
        {HelpTopic::Review, "review"},
        {HelpTopic::Figures, "figures"},
        {HelpTopic::Find, "find"},
        {HelpTopic::Stock, "stock"},
        {HelpTopic::StockBookIn, "stock_book_in"},
        {HelpTopic::StockChange, "stock_change"},
        {HelpTopic::Products, "products"},
        {HelpTopic::SetUp, "set_up"},
        {HelpTopic::Keeping, "keeping"},
        {HelpTopic::Practice, "practice"},
    }};
};

struct HelpText {
    QString title;
    QString purpose;
    QString how;
    QString wrong;
    QString limit; ///< where it comes from
};

[[nodiscard]] HelpText helpText(HelpTopic topic);

} // namespace strandbench
