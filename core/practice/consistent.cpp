// SPDX-License-Identifier: GPL-3.0-or-later
// From what is shown back to what may be: every truth is tried against the forward model.
#include "practice/inference.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Every kind of damage, each seam in all its ways.
std::vector<Candidates::Kind> everyDamage()
{
    std::vector<Candidates::Kind> all;
    for (const auto& [kind, code] : Codes<DamageKind>::table) {
        if (kind == DamageKind::WeldSeam) {
            for (const auto& [weld, name] : Codes<WeldKind>::table)
                all.push_back({kind, weld, {}});
        } else if (kind == DamageKind::BondSeam) {
            all.push_back({kind, {}, true});
            all.push_back({kind, {}, false});
        } else {
            all.push_back({kind, {}, {}});
        }
    }
    return all;
}

template <class E, class Shows> std::vector<E> those(const Shows& shows)
{
    std::vector<E> all;
    for (const auto& [each, code] : Codes<E>::table)
        if (shows(each))
            all.push_back(each);
    return all;
}

template <class E> std::optional<E> only(const std::vector<E>& all)
{
    return all.size() == 1 ? std::optional(all.front()) : std::nullopt;
}

bool sameKind(const std::vector<Candidates::Kind>& all)
{
    return !all.empty() && std::ranges::all_of(all, [&](const auto& each) { return each.kind == all.front().kind; });
}

/// The damage that is shown: empty where its kind is not told; a seam without what is not told of it.
std::optional<Damage> damageFrom(const PracticePanel& panel, const Candidates& left)
{
    if (!panel.truth.damage || !sameKind(left.damages))
        return std::nullopt;
    Damage damage = *panel.truth.damage;
    damage.kind = left.damages.front().kind;
    damage.length = panel.shown.tipsAt.value_or(panel.shown.visibleLength);
    damage.weld.reset();
    damage.adhesiveCured.reset();
    if (left.damages.size() == 1) {
        damage.weld = left.damages.front().weld;
        damage.adhesiveCured = left.damages.front().adhesiveCured;
    }
    return damage;
}

void compareDamage(QStringList& open, const Assessment& truth, const Assessment& found)
{
    if (!found.damage || !truth.damage || found.damage->kind != truth.damage->kind) {
        open << u"damage_kind"_s;
        return;
    }
    if (found.damage->length != truth.damage->length)
        open << u"size"_s;
    if (found.damage->weld != truth.damage->weld)
        open << u"weld"_s;
    if (found.damage->adhesiveCured != truth.damage->adhesiveCured)
        open << u"adhesive_cured"_s;
    if (truth.damage->kind == DamageKind::Hole && found.rearAccess != truth.rearAccess)
        open << u"rear_access"_s;
}

} // namespace

Candidates consistentWith(const Evidence& evidence)
{
    Candidates left;
    left.surfaces = those<SurfaceState>([&](SurfaceState each) { return showsSurface(each, evidence); });
    left.substrates = those<Substrate>([&](Substrate each) {
        return std::ranges::any_of(left.surfaces,
                                   [&](SurfaceState surface) { return showsSubstrate(each, surface, evidence); });
    });
    for (const std::vector<Candidates::Kind> every = everyDamage(); const Candidates::Kind& each : every)
        if (showsDamage(each, evidence))
            left.damages.push_back(each);
    left.zones = those<Zone>([&](Zone each) { return showsZone(each, evidence); });
    left.moistures = those<Moisture>([&](Moisture each) { return showsMoisture(each, evidence); });
    left.cores = those<CoreMaterial>([&](CoreMaterial each) { return showsCore(each, evidence); });
    return left;
}

Assessment assessmentFrom(const PracticePanel& panel)
{
    const Candidates left = consistentWith(panel.shown);
    Assessment found = panel.truth;
    found.substrate = left.substrates.size() > 1 ? Substrate::Unknown : only(left.substrates);
    found.surface = only(left.surfaces);
    found.damage = damageFrom(panel, left);
    found.rearAccess.reset();
    if (found.damage && found.damage->kind == DamageKind::Hole)
        found.rearAccess = panel.shown.reach == BackReach::Hand;
    found.zone = only(left.zones);
    found.moisture = only(left.moistures);
    found.core = only(left.cores).value_or(CoreMaterial::None);
    return found;
}

QStringList unanswered(const PracticePanel& panel)
{
    const Assessment found = assessmentFrom(panel);
    const Assessment& truth = panel.truth;
    QStringList open;
    if (!found.substrate || found.substrate != truth.substrate)
        open << u"substrate"_s;
    if (!found.surface || found.surface != truth.surface)
        open << u"surface"_s;
    compareDamage(open, truth, found);
    if (!found.zone || found.zone != truth.zone)
        open << u"zone"_s;
    if (!found.moisture || found.moisture != truth.moisture)
        open << u"moisture"_s;
    if (found.core != truth.core)
        open << u"core"_s;
    return open;
}

} // namespace strandbench
