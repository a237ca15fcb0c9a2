// SPDX-License-Identifier: GPL-3.0-or-later
// What a mistake would have come to: from the decision table and the cure engine, as codes with typed arguments.
#pragma once

#include "cure/cure_case.h"
#include "practice/laid_lift.h"

namespace strandbench {

/// What is drawn beside the sentence.
enum class ConsequencePicture { Panel, Section, Board, Curve, Steps, Surface };
template <> struct Codes<ConsequencePicture> {
    static constexpr std::array<std::pair<ConsequencePicture, const char*>, 6> table{{
        {ConsequencePicture::Panel, "panel"},
        {ConsequencePicture::Section, "section"},
        {ConsequencePicture::Board, "board"},
        {ConsequencePicture::Curve, "curve"},
        {ConsequencePicture::Steps, "steps"},
        {ConsequencePicture::Surface, "surface"},
    }};
};

struct Consequence {
    Reason what;                      ///< the codes stand in knownConsequences()
    std::optional<Reason> sheetsWord; ///< what the product sheet says of it, to be told as the sheet's
    ConsequencePicture picture = ConsequencePicture::Panel;
    std::optional<CureCase> cureCase; ///< of a curve: as it was laid
    bool operator==(const Consequence&) const = default;
};

/// A consequence that the cure engine has no case of.
[[nodiscard]] Consequence consequenceOf(const QString& code, std::vector<Argument> arguments,
                                        ConsequencePicture picture);

/// A code with what its arguments are, one word each: length, mass, duration, temperature, step, share, count, code.
/// One with '*' at its end may come any number of times, or not at all.
struct CodeWithArguments {
    QString code;
    QStringList arguments;
};
/// Every code of a consequence and of a sheet's word, for those who make sentences of them.
[[nodiscard]] const std::vector<CodeWithArguments>& knownConsequences();

/// What one wrong answer would have led to where all else is answered rightly.
[[nodiscard]] Consequence ofWrongAnswer(const ModelAnswer& truth, const Assessment& withThatAnswer,
                                        const PlanningSet& shop);
/// Of filling where this decision stops.
[[nodiscard]] Consequence ofFilledStop(const ModelAnswer& stopped);
/// Of hardener so much beside the sheet: when it gels and sands as it was mixed, against the nominal dose.
[[nodiscard]] Consequence ofHardener(const PlacedLift& lift, Fraction hardener, const ModelAnswer& answer,
                                     const PlanningSet& shop);
/// Of a lift laid too thick: its peak, the limit, and that it will map.
[[nodiscard]] Consequence ofThickLift(const PlacedLift& lift, const LayerCure* cure, const ModelAnswer& answer,
                                      const PlanningSet& shop);
/// Of a batch that gels on the board before it is spread: the gel, and the grams that stay there.
[[nodiscard]] Consequence ofBoardGel(Mass filler, Duration boardGel, const PlanningSet& shop);
/// Of sanding before its time: how far its face had cured, what sanding needs, and when that is.
[[nodiscard]] Consequence ofEarlySanding(const LayerCure& cure, Duration at);

} // namespace strandbench
