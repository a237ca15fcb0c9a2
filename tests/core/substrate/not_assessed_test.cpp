// SPDX-License-Identifier: GPL-3.0-or-later
// A question that is not answered is a stop, never a yes. Common practice, no source.
#include "sound_panels.h"

#include <gmock/gmock.h>

#include <functional>
#include <random>

using namespace Qt::StringLiterals;
using testing::Contains;
using testing::ElementsAre;

namespace strandbench::test {
namespace {

struct Question {
    const char* name;
    bool (*asked)(const Assessment&);
    bool (*answered)(const Assessment&);
    void (*forget)(Assessment&);
};

bool isKind(const Assessment& a, DamageKind kind) { return a.damage && a.damage->kind == kind; }
bool always(const Assessment&) { return true; }
bool hasDamage(const Assessment& a) { return a.damage.has_value(); }

constexpr std::array<Question, 10> questions{{
    {"substrate", always, [](const Assessment& a) { return a.substrate.has_value(); },
     [](Assessment& a) { a.substrate.reset(); }},
    {"damage_kind", always, hasDamage, [](Assessment& a) { a.damage.reset(); }},
    {"size", hasDamage, [](const Assessment& a) { return a.damage->length.value() > 0; },
     [](Assessment& a) { a.damage->length = millimetres(0); }},
    {"rear_access", [](const Assessment& a) { return isKind(a, DamageKind::Hole); },
     [](const Assessment& a) { return a.rearAccess.has_value(); }, [](Assessment& a) { a.rearAccess.reset(); }},
    {"weld", [](const Assessment& a) { return isKind(a, DamageKind::WeldSeam); },
     [](const Assessment& a) { return a.damage->weld.has_value(); }, [](Assessment& a) { a.damage->weld.reset(); }},
    {"adhesive_cured", [](const Assessment& a) { return isKind(a, DamageKind::BondSeam); },
     [](const Assessment& a) { return a.damage->adhesiveCured.has_value(); },
     [](Assessment& a) { a.damage->adhesiveCured.reset(); }},
    {"surface", always, [](const Assessment& a) { return a.surface.has_value(); },
     [](Assessment& a) { a.surface.reset(); }},
    {"zone", always, [](const Assessment& a) { return a.zone.has_value(); }, [](Assessment& a) { a.zone.reset(); }},
    {"moisture", always, [](const Assessment& a) { return a.moisture.has_value(); },
     [](Assessment& a) { a.moisture.reset(); }},
    {"reading", always, [](const Assessment& a) { return a.reading.has_value(); },
     [](Assessment& a) { a.reading.reset(); }},
}};

/// Where each of the ten can be forgotten from a panel that would be filled.
const std::array<std::pair<Substrate, DamageKind>, 4> panels{{
    {Substrate::Smc, DamageKind::Hole},
    {Substrate::Steel, DamageKind::WeldSeam},
    {Substrate::Laminate, DamageKind::BondSeam},
    {Substrate::Aluminium, DamageKind::Dent},
}};

TEST(NotAssessed, EachQuestionAlone)
{
    int forgotten = 0;
    for (const auto& [substrate, kind] : panels) {
        ASSERT_TRUE(decideHere(soundPanel(substrate, kind)).fill);
        for (const Question& question : questions) {
            Assessment assessment = soundPanel(substrate, kind);
            if (!question.asked(assessment))
                continue;
            question.forget(assessment);
            const Decision decision = decideHere(assessment);
            EXPECT_FALSE(decision.fill) << question.name;
            EXPECT_THAT(stopCodes(decision), ElementsAre(u"not_assessed"_s)) << question.name;
            EXPECT_THAT(unanswered(decision), ElementsAre(QString::fromLatin1(question.name)));
            ++forgotten;
        }
    }
    EXPECT_EQ(forgotten, 4 * 7 + 3);
}

TEST(NotAssessed, NothingAnsweredNamesAllThatIsAsked)
{
    EXPECT_THAT(unanswered(decideHere(Assessment{})),
                ElementsAre(u"damage_kind"_s, u"moisture"_s, u"reading"_s, u"substrate"_s, u"surface"_s, u"zone"_s));
}

/// Seeded, so that a failure can be repeated.
class Dice {
public:
    template <class T, std::size_t n> const T& from(const std::array<T, n>& all)
    {
        return all.at(std::uniform_int_distribution<std::size_t>(0, n - 1)(m_random));
    }
    template <class E> E any() { return from(Codes<E>::table).first; }
    bool chance(double share) { return between(0, 1) < share; }
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }

private:
    std::mt19937_64 m_random{20261125};
};

/// Anything that a bench could hold, rather more often fit to fill than chance would have it.
Assessment anyAssessment(Dice& dice)
{
    const bool kind = dice.chance(0.6);
    Assessment a = soundPanel(dice.from(filledSubstrates), dice.any<DamageKind>());
    a.damage->length = millimetres(dice.between(1, 90));
    a.damage->width = millimetres(dice.between(1, 90));
    a.damage->depth = millimetres(dice.between(0.5, 8));
    a.rearAccess = dice.chance(0.5);
    const double spoilt = kind ? 0.03 : 0.3;
    if (dice.chance(spoilt))
        a.substrate = dice.any<Substrate>();
    if (dice.chance(spoilt))
        a.damage->weld = dice.any<WeldKind>();
    if (dice.chance(spoilt))
        a.damage->adhesiveCured = dice.chance(0.5);
    if (dice.chance(spoilt))
        a.surface = dice.any<SurfaceState>();
    if (dice.chance(spoilt))
        a.zone = dice.any<Zone>();
    if (dice.chance(spoilt))
        a.moisture = dice.any<Moisture>();
    if (dice.chance(spoilt))
        a.core = dice.any<CoreMaterial>();
    if (dice.chance(spoilt))
        a.reading = Reading{celsius(dice.between(-10, 50)), celsius(dice.between(-10, 50)),
                            Fraction::ofHundred(dice.between(1, 100))};
    for (const Question& question : questions)
        if (dice.chance(spoilt) && question.asked(a))
            question.forget(a);
    return a;
}

/// What the trade refuses, said once more and without the program's help; empty when nothing is in the way.
std::string refusedBecause(const Assessment& a)
{
    for (const Question& question : questions)
        if (question.asked(a) && !question.answered(a))
            return question.name;
    const bool metal = *a.substrate == Substrate::Steel || *a.substrate == Substrate::Galvanised ||
                       *a.substrate == Substrate::Aluminium;
    if (!metal && *a.substrate != Substrate::Laminate && *a.substrate != Substrate::Smc)
        return "substrate is refused";
    if (*a.zone != Zone::Cosmetic || *a.moisture != Moisture::Dry)
        return "zone or moisture is refused";
    if (*a.surface != SurfaceState::Bare && *a.surface != SurfaceState::AbradedEpoxy)
        return "surface is refused";
    if (a.core == CoreMaterial::Foam || a.core == CoreMaterial::WetWood)
        return "core is refused";
    const Damage& d = *a.damage;
    const bool through = d.kind == DamageKind::Hole || d.kind == DamageKind::RustHole || d.kind == DamageKind::Crack;
    if ((metal && through) || d.kind == DamageKind::RustHole)
        return "metal is through";
    if (d.kind == DamageKind::WeldSeam && (!metal || *d.weld != WeldKind::Solid))
        return "weld is refused";
    if (d.kind == DamageKind::BondSeam && !*d.adhesiveCured)
        return "bond is not cured";
    if (d.kind == DamageKind::Hole && (inMillimetres(d.length) > 75 || inMillimetres(d.width) > 75))
        return "hole is too large";
    if (d.kind == DamageKind::Dent && metal && inMillimetres(d.depth) > 6)
        return "dent is too deep";
    const double air = inCelsius(a.reading->air);
    const double panel = inCelsius(a.reading->panel);
    if (air < 10 || air > 35 || panel < 10 || panel > 30)
        return "too cold or too hot";
    return {};
}

TEST(NotAssessed, NothingDefaultsToYes)
{
    Dice dice;
    int filled = 0;
    int refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        const Assessment assessment = anyAssessment(dice);
        const Decision decision = decideHere(assessment);
        const std::string because = refusedBecause(assessment);
        ASSERT_EQ(decision.fill, decision.stops.empty());
        ASSERT_EQ(decision.fill, decision.filler.has_value());
        if (!because.empty()) {
            ++refused;
            ASSERT_FALSE(decision.fill) << "round " << round << ", " << because;
        } else if (!decision.fill) {
            // The demo sheets leave a filler for everything else that is fit to fill, so only damp air is left.
            ASSERT_THAT(stopCodes(decision), ElementsAre(u"panel_near_dew_point"_s)) << "round " << round;
        }
        filled += decision.fill ? 1 : 0;
        // What a fill rests on is all needed: without any one answer it stops, and says which.
        for (const Question& question : questions) {
            if (!decision.fill || !question.asked(assessment))
                continue;
            Assessment less = assessment;
            question.forget(less);
            const Decision without = decideHere(less);
            ASSERT_FALSE(without.fill) << "round " << round << ", " << question.name;
            ASSERT_THAT(unanswered(without), Contains(QString::fromLatin1(question.name))) << "round " << round;
        }
    }
    EXPECT_GT(filled, 2000);
    EXPECT_GT(refused, 5000);
}

} // namespace
} // namespace strandbench::test
