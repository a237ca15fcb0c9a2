// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/words.h"

#include "words/faults.h"
#include "words/names.h"
#include "words/questions.h"
#include "words/reasons.h"
#include "words/steps.h"
#include "words/stops.h"
#include "words/table.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {

using words::NameOf;

namespace {

constexpr words::Line stretches[] = {
    {"prepare", QT_TRANSLATE_NOOP("Words", "prepare")},
    {"prepare_waiting", QT_TRANSLATE_NOOP("Words", "dry and flash off")},
    {"mix", QT_TRANSLATE_NOOP("Words", "mix")},
    {"spread", QT_TRANSLATE_NOOP("Words", "spread")},
    {"wait", QT_TRANSLATE_NOOP("Words", "hands off")},
    {"sand", QT_TRANSLATE_NOOP("Words", "sand")},
    {"turn", QT_TRANSLATE_NOOP("Words", "turn the panel")},
    {"finish", QT_TRANSLATE_NOOP("Words", "finish")},
    {"finish_waiting", QT_TRANSLATE_NOOP("Words", "guide coat dries")},
    {"before_primer", QT_TRANSLATE_NOOP("Words", "cure before primer")},
};

const std::vector<QString>& cautionCodesAt(Station station)
{
    static const std::vector<QString> mix{u"peroxide"_s, u"peroxide_in_eye"_s, u"styrene_vapour"_s, u"nothing_back"_s};
    static const std::vector<QString> spread{u"styrene_vapour"_s, u"hot_lump"_s};
    static const std::vector<QString> wait{u"hot_lump"_s, u"lamp_before_filler"_s};
    static const std::vector<QString> sand{u"filler_dust"_s, u"rotating_tools"_s};
    static const std::vector<QString> none;
    switch (station) {
    case Station::Mix:
        return mix;
    case Station::Spread:
        return spread;
    case Station::Wait:
        return wait;
    case Station::Sand:
    case Station::Turn:
        return sand;
    case Station::Assess:
    case Station::Decide:
    case Station::Prepare:
    case Station::Finish:
    case Station::HandOver:
    case Station::Done:
    case Station::Parked:
    case Station::Returned:
        break;
    }
    return none;
}

QString overrideLine(Override overridable)
{
    return overridable == Override::Nobody
               ? words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "Nobody may override this."))
               : words::inLanguage("Words",
                                   QT_TRANSLATE_NOOP("Words", "Only the supervisor may override, with a reason."));
}

QString parkTitle(const QString& place)
{
    if (place.isEmpty())
        return words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "Park it"));
    //: %1 is where it goes: "to the welding shop"
    return words::fillIn(words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "Park it — %1")), {place});
}

} // namespace

Words::Words(UnitSystem units, const QLocale& locale) : m_units(units), m_locale(locale) {}

QString Words::substrate(Substrate value) const { return words::nameOf(NameOf::Substrate, codeOf(value)); }
QString Words::damage(DamageKind value) const { return words::nameOf(NameOf::Damage, codeOf(value)); }
QString Words::weld(WeldKind value) const { return words::nameOf(NameOf::Weld, codeOf(value)); }
QString Words::surface(SurfaceState value) const { return words::nameOf(NameOf::Surface, codeOf(value)); }
QString Words::zone(Zone value) const { return words::nameOf(NameOf::Zone, codeOf(value)); }
QString Words::moisture(Moisture value) const { return words::nameOf(NameOf::Moisture, codeOf(value)); }
QString Words::core(CoreMaterial value) const { return words::nameOf(NameOf::Core, codeOf(value)); }
QString Words::filler(FillerClass value) const { return words::nameOf(NameOf::Filler, codeOf(value)); }
QString Words::face(Face value) const { return words::nameOf(NameOf::Face, codeOf(value)); }
QString Words::phase(Phase value) const { return words::nameOf(NameOf::Phase, codeOf(value)); }
QString Words::station(Station value) const { return words::nameOf(NameOf::Station, codeOf(value)); }
QString Words::questionName(Question value) const { return words::nameOf(NameOf::Question, codeOf(value)); }

QString Words::title(const QString& name) { return name.isEmpty() ? name : name.front().toUpper() + name.mid(1); }

QString Words::jobLabel(const QString& job) const
{
    //: %1 is the job's number
    return words::fillIn(words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "Job %1")), {job});
}

QString Words::batches(int count) const { return QCoreApplication::translate("Words", "%n batch(es)", nullptr, count); }

QString Words::nameOfCode(const QString& code) const { return words::nameOfAnyCode(code); }

QString Words::hint(Substrate value) const { return words::hintOf(NameOf::Substrate, codeOf(value)); }
QString Words::hint(DamageKind value) const { return words::hintOf(NameOf::Damage, codeOf(value)); }
QString Words::hint(WeldKind value) const { return words::hintOf(NameOf::Weld, codeOf(value)); }
QString Words::hint(SurfaceState value) const { return words::hintOf(NameOf::Surface, codeOf(value)); }
QString Words::hint(Zone value) const { return words::hintOf(NameOf::Zone, codeOf(value)); }
QString Words::hint(Moisture value) const { return words::hintOf(NameOf::Moisture, codeOf(value)); }
QString Words::hint(CoreMaterial value) const { return words::hintOf(NameOf::Core, codeOf(value)); }

QString Words::question(Question value) const { return words::questionSentence(codeOf(value)); }
QString Words::answer(Question value, bool yes) const { return words::yesNoTitle(codeOf(value), yes); }
QString Words::answerHint(Question value, bool yes) const { return words::yesNoHint(codeOf(value), yes); }

QString Words::reason(const Reason& reason) const
{
    // A placeholder may stand at the front ("%1 suits better here."), so the first letter is made large.
    return title(words::fillIn(words::reasonText(reason.code), arguments(reason.arguments)));
}

StopText Words::stop(const Stop& stop) const
{
    const QString to = stop.parkTo.isEmpty() ? QString() : place(stop.parkTo);
    return {stopHeadline(stop.reason.code),
            reason(stop.reason),
            words::stopWhy(stop.reason.code),
            words::insteadLine(stop.instead),
            words::insteadDetail(stop.instead),
            overrideLine(stop.overridable),
            to,
            parkTitle(to),
            words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "The maker’s repair manual, local codes and licensed "
                                                                  "practice come first."))};
}

QString Words::stopHeadline(const QString& code) const { return words::stopHeadline(code); }
QString Words::place(const QString& code) const { return words::placeOf(code); }

StepText Words::step(const Step& step) const
{
    const QStringList figures = arguments(step.arguments);
    StepText text{words::fillIn(words::stepSentence(step.code), figures),
                  words::fillIn(words::stepDetail(step.code), figures),
                  words::stepWayOn(step.code),
                  {}};
    for (const QString& each : step.cautions)
        text.cautions.push_back(caution(each));
    return text;
}

StepText Words::handOverTest(const QString& code) const { return step({code, seconds(0), seconds(0), {}, {}}); }

CautionText Words::caution(const QString& code) const
{
    return {code, words::cautionLead(code), words::cautionRest(code)};
}

std::vector<CautionText> Words::cautionsAt(Station station) const
{
    std::vector<CautionText> texts;
    for (const QString& each : cautionCodesAt(station))
        texts.push_back(caution(each));
    return texts;
}

QString Words::timelineName(const QString& code) const { return words::lookUp("Words", stretches, code); }

QString Words::fault(const Fault& fault, FieldNames names) const
{
    if (fault.field.isEmpty())
        return words::faultLine(fault, words::inLanguage("Words", QT_TRANSLATE_NOOP("Words", "input")));
    return words::faultLine(fault, names == FieldNames::AsInput ? fault.field : words::fieldName(fault.field));
}

} // namespace strandbench
