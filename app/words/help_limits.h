// SPDX-License-Identifier: GPL-3.0-or-later
// Where the limits of a topic come from, said alike wherever it is the same; only the tables of help include this.
#pragma once

#include "words/help_words.h"

#include <QtGlobal>

#include <span>

namespace strandbench::words {

struct HelpLine {
    HelpTopic topic;
    const char* title;
    const char* purpose;
    const char* how;
    const char* wrong;
    const char* limit;
};

namespace limit {
inline constexpr const char* sheet =
    QT_TRANSLATE_NOOP("Help", "The limits are the product sheet’s; where it is silent, the shop’s own assumptions.");
inline constexpr const char* table =
    QT_TRANSLATE_NOOP("Help", "The decision table says what is filled with what; each answer carries its reason.");
inline constexpr const char* shop =
    QT_TRANSLATE_NOOP("Help", "The limits are the shop’s own and stand in bench set-up with their reason.");
inline constexpr const char* sds =
    QT_TRANSLATE_NOOP("Help", "The safety data sheet says what protects you; it comes before this program.");
inline constexpr const char* maker =
    QT_TRANSLATE_NOOP("Help", "The vehicle maker’s repair manual, local codes and licensed practice come first.");
inline constexpr const char* log =
    QT_TRANSLATE_NOOP("Help", "What was tapped stays in the log; a mistake is put right by a new entry.");
inline constexpr const char* dew =
    QT_TRANSLATE_NOOP("Help", "Dew margin and range stand in bench set-up; a product sheet may ask for more.");
inline constexpr const char* engine =
    QT_TRANSLATE_NOOP("Help", "Times come from sheet, air, panel and lot; what you see on the filler wins.");
inline constexpr const char* practice = QT_TRANSLATE_NOOP("Help", "Nothing of practice goes into the log of the shop.");
} // namespace limit

[[nodiscard]] std::span<const HelpLine> helpOfRepairs();
[[nodiscard]] std::span<const HelpLine> helpOfShop();

} // namespace strandbench::words
