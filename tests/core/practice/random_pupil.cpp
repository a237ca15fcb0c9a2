// SPDX-License-Identifier: GPL-3.0-or-later
#include "pupils.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Fingers {
public:
    explicit Fingers(std::mt19937_64& random) : m_random(random) {}

    bool chance(double share) { return between(0, 1) < share; }
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }
    int count(int most) { return std::uniform_int_distribution<int>(0, most)(m_random); }
    template <class E> E any()
    {
        const auto& table = Codes<E>::table;
        return table[static_cast<std::size_t>(count(static_cast<int>(table.size()) - 1))].first;
    }
    template <class E> std::optional<E> perhaps() { return chance(0.9) ? std::optional(any<E>()) : std::nullopt; }
    /// Mostly of a bench's size, sometimes of none.
    Length length(double most)
    {
        if (chance(0.05))
            return millimetres(-most);
        return millimetres(chance(0.05) ? between(0, most * 1000) : between(0, most));
    }
    std::optional<Duration> moment() { return chance(0.1) ? std::nullopt : std::optional(minutes(between(-1, 30))); }

private:
    std::mt19937_64& m_random;
};

Damage anyDamage(Fingers& fingers, const Damage& truth)
{
    Damage damage = truth;
    if (fingers.chance(0.5))
        damage.kind = fingers.any<DamageKind>();
    if (fingers.chance(0.5)) {
        damage.length = fingers.length(300);
        damage.width = fingers.length(200);
        damage.depth = fingers.length(20);
        damage.bevelRatio = fingers.between(-1, 6);
    }
    if (fingers.chance(0.3))
        damage.weld = fingers.perhaps<WeldKind>();
    if (fingers.chance(0.3))
        damage.adhesiveCured = fingers.chance(0.5);
    return damage;
}

void anyAnswers(Fingers& fingers, Assessment& found)
{
    if (fingers.chance(0.4))
        found.substrate = fingers.perhaps<Substrate>();
    if (fingers.chance(0.3))
        found.surface = fingers.chance(0.7) ? std::optional(SurfaceState::Bare) : fingers.perhaps<SurfaceState>();
    if (fingers.chance(0.3))
        found.zone = fingers.chance(0.7) ? std::optional(Zone::Cosmetic) : fingers.perhaps<Zone>();
    if (fingers.chance(0.3))
        found.moisture = fingers.perhaps<Moisture>();
    if (fingers.chance(0.2))
        found.core = fingers.any<CoreMaterial>();
    if (fingers.chance(0.3))
        found.rearAccess = fingers.chance(0.5);
    if (fingers.chance(0.05))
        found.damage.reset();
    else if (fingers.chance(0.5))
        found.damage = anyDamage(fingers, *found.damage);
    found.overridden = {u"surface_paint"_s, u"panel_near_dew_point"_s}; // nobody asked for it
}

AttemptedLift anyLift(Fingers& fingers)
{
    AttemptedLift lift{fingers.any<Face>(), fingers.length(12), {}, fingers.moment()};
    for (int i = fingers.count(3); i > 0; --i)
        lift.batches.push_back({fingers.length(220), fingers.length(400), fingers.moment()});
    return lift;
}

} // namespace

Attempt randomAttempt(const Lesson& lesson, std::mt19937_64& random)
{
    Fingers fingers(random);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    anyAnswers(fingers, attempt.found);
    attempt.fill = fingers.chance(0.05) ? std::nullopt : std::optional(fingers.chance(0.7));
    if (fingers.chance(0.5))
        attempt.stops = {knownStopCodes()[static_cast<std::size_t>(fingers.count(20))], u"nonsense"_s};
    attempt.filler = fingers.perhaps<FillerClass>();
    for (const StepRule& each : shop().steps.prepare)
        if (fingers.chance(0.5))
            attempt.steps.push_back(each.code);
    std::ranges::shuffle(attempt.steps, random);
    if (fingers.chance(0.8)) {
        attempt.lifts.clear();
        for (int i = fingers.count(3); i > 0; --i)
            attempt.lifts.push_back(anyLift(fingers));
    }
    attempt.turned = fingers.chance(0.5);
    if (fingers.chance(0.8))
        attempt.finish = AttemptedFinish{fingers.count(5) - 1, fingers.length(4), {}, minutes(fingers.between(-5, 90))};
    return attempt;
}

} // namespace strandbench::test
