// SPDX-License-Identifier: GPL-3.0-or-later
// Codes and figures become words: in the application's language, with the person's units and number format.
// Core returns codes and arguments; nobody but this folder turns them into text.
#pragma once

#include "clock/batch_clock.h"
#include "clock/clock.h"
#include "plan/repair_plan.h"
#include "quantity/fault.h"
#include "quantity/units.h"
#include "repair/event.h"
#include "repair/repair.h"

#include <QLocale>
#include <QString>

#include <vector>

namespace strandbench {

/// A caution as it is shown beside its sign.
struct CautionText {
    QString code; ///< names its drawing, too
    QString lead; ///< bold, at most six words
    QString rest; ///< one short line
};

/// A step of preparing, finishing or handing over.
struct StepText {
    QString sentence; ///< imperative, at most ten words, no full stop
    QString detail;   ///< at most two short sentences
    QString wayOn;    ///< what confirming it records: "All tips drilled"
    std::vector<CautionText> cautions;
};

/// A refusal, for its own screen.
struct StopText {
    QString headline; ///< "Do not fill this seam"
    QString wrong;    ///< "It is spot-welded: a joint, not damage."
    QString why;
    QString instead;       ///< what to do instead
    QString insteadDetail; ///< and what goes with it
    QString overridable;   ///< who may override
    QString place;         ///< where to park it: "to the welding shop"; empty when there is nowhere
    QString park;          ///< the way on: "Park it — to the welding shop"
    QString precedence;    ///< the maker's manual, codes and licensed practice come first
};

/// How a fault names its field: as the input spells it (headless), or as a person calls it (screens).
enum class FieldNames { AsInput, ForPerson };

/// An immutable value; make a new one when units, number format or language change. The language is the
/// application's (its translators); units and number format are this value's own.
class Words {
public:
    Words(UnitSystem units, const QLocale& locale);

    [[nodiscard]] UnitSystem units() const { return m_units; }
    [[nodiscard]] const QLocale& locale() const { return m_locale; }

    // Names, as they stand inside a sentence; title() makes one stand alone: "Laminate".
    [[nodiscard]] QString substrate(Substrate value) const;
    [[nodiscard]] QString damage(DamageKind value) const;
    [[nodiscard]] QString weld(WeldKind value) const;
    [[nodiscard]] QString surface(SurfaceState value) const;
    [[nodiscard]] QString zone(Zone value) const;
    [[nodiscard]] QString moisture(Moisture value) const;
    [[nodiscard]] QString core(CoreMaterial value) const;
    [[nodiscard]] QString filler(FillerClass value) const;
    [[nodiscard]] QString face(Face value) const;
    [[nodiscard]] QString phase(Phase value) const;
    [[nodiscard]] QString station(Station value) const;
    [[nodiscard]] QString questionName(Question value) const; ///< "kind of weld"
    [[nodiscard]] static QString title(const QString& name);  ///< with its first letter large
    [[nodiscard]] QString jobLabel(const QString& job) const; ///< "Job 4421"
    [[nodiscard]] QString batches(int count) const;           ///< "2 batches"
    /// The name of any code that stands in a summary or a reason ("smc", "hole", "mixed_strand").
    [[nodiscard]] QString nameOfCode(const QString& code) const;

    // How to tell an answer from the others: one short line.
    [[nodiscard]] QString hint(Substrate value) const;
    [[nodiscard]] QString hint(DamageKind value) const;
    [[nodiscard]] QString hint(WeldKind value) const;
    [[nodiscard]] QString hint(SurfaceState value) const;
    [[nodiscard]] QString hint(Zone value) const;
    [[nodiscard]] QString hint(Moisture value) const;
    [[nodiscard]] QString hint(CoreMaterial value) const;

    /// The question as asked, at most ten words.
    [[nodiscard]] QString question(Question value) const;
    /// The answers to a question of yes or no (AdhesiveCured, RearAccess): title and how to tell.
    [[nodiscard]] QString answer(Question value, bool yes) const;
    [[nodiscard]] QString answerHint(Question value, bool yes) const;

    /// A reason, a stop's included: one short sentence. An argument that is text is rendered as a code.
    [[nodiscard]] QString reason(const Reason& reason) const;
    [[nodiscard]] StopText stop(const Stop& stop) const;
    [[nodiscard]] QString stopHeadline(const QString& code) const; ///< for a parked job's card
    [[nodiscard]] QString place(const QString& code) const;        ///< "to the welding shop"
    [[nodiscard]] StepText step(const Step& step) const;
    /// A test of the hand-over, by its code in handOverTests().
    [[nodiscard]] StepText handOverTest(const QString& code) const;
    [[nodiscard]] CautionText caution(const QString& code) const;
    /// The cautions of a station that has no step of its own: mix, spread, wait, sand, turn.
    [[nodiscard]] std::vector<CautionText> cautionsAt(Station station) const;
    /// A stretch of a plan's timeline, by TimelineEntry::code.
    [[nodiscard]] QString timelineName(const QString& code) const;

    /// One line naming field, value and what is allowed.
    [[nodiscard]] QString fault(const Fault& fault, FieldNames names = FieldNames::ForPerson) const;

    // Figures with their unit, printed as quantity/units.h says.
    [[nodiscard]] QString length(Length value) const;     ///< "152 mm", or to 1/16 in
    [[nodiscard]] QString fineLength(Length value) const; ///< to 0.1 mm, or to 1/32 in: panels, lifts, drills
    [[nodiscard]] QString thickness(Length value) const;  ///< to 0.1 mm, or to 0.01 in: finishing filler
    [[nodiscard]] QString lengthPair(Length length, Length width) const; ///< "60 × 40 mm"
    [[nodiscard]] QString mass(Mass value) const;                        ///< filler: to 0.1 g
    [[nodiscard]] QString hardener(Mass value) const;                    ///< to 0.05 g; below 1 g to 0.01 g
    [[nodiscard]] QString volume(Volume value) const;                    ///< to 0.1 ml
    [[nodiscard]] QString temperature(Temperature value) const;          ///< to half a degree, or to 1 degF
    [[nodiscard]] QString fineTemperature(Temperature value) const;      ///< to 0.1 degree, beside a limit
    [[nodiscard]] QString temperatureStep(TemperatureStep value) const;  ///< never rounded up
    [[nodiscard]] QString percent(Fraction value) const;
    [[nodiscard]] QString duration(Duration value) const;     ///< mm:ss, minutes counted on
    [[nodiscard]] QString longDuration(Duration value) const; ///< "45 min", "2 h 10 min"
    [[nodiscard]] QString age(Duration value) const;          ///< "45 min", from an hour on whole hours gone: "2 h"
    /// Local hours and minutes of a moment, or of so much later.
    [[nodiscard]] QString clockTime(const Instant& at, Duration later = seconds(0)) const;
    [[nodiscard]] QString number(double value, int decimals) const; ///< to so many decimals

private:
    [[nodiscard]] QStringList arguments(const std::vector<Argument>& arguments) const;

    UnitSystem m_units;
    QLocale m_locale;
};

} // namespace strandbench
