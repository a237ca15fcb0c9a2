// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/plan_json.h"
#include "exchange/strict_json.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestJob = 24;
constexpr int longestPanel = 60;

bool goesThrough(DamageKind kind) { return kind == DamageKind::Hole || kind == DamageKind::RustHole; }

/// Reads the damage and, for a seam, what is asked of it in the damage or at the root.
class DamageReader {
public:
    DamageReader(const QJsonObject& json, StrictObject& root, Faults& faults)
        : m_damage(json, u"damage"_s, faults), m_root(root), m_faults(faults)
    {}

    Damage read()
    {
        const std::size_t before = m_faults.size();
        const auto kind = m_damage.oneOf<DamageKind>(u"kind"_s);
        m_kindKnown = m_faults.size() == before;
        Damage damage;
        damage.kind = kind;
        damage.length = millimetres(m_damage.number(u"length_mm"_s, 1, 3000, u"mm"_s));
        damage.width = millimetres(m_damage.number(u"width_mm"_s, kind == DamageKind::Crack ? 0 : 0.5, 1000, u"mm"_s));
        depths(damage);
        damage.bevelRatio = bevel(kind);
        damage.weld = weld(kind);
        damage.adhesiveCured = adhesiveCured(kind);
        m_damage.finish();
        return damage;
    }

private:
    void depths(Damage& damage)
    {
        const QString depthKey = u"depth_mm"_s;
        const QString panelKey = u"panel_thickness_mm"_s;
        const std::size_t before = m_faults.size();
        const double panel = m_damage.number(panelKey, 0.3, 60, u"mm"_s);
        const bool through = m_kindKnown && goesThrough(damage.kind);
        double depth = panel;
        if (through)
            depth = m_damage.optionalNumber(depthKey, 0.1, 60, u"mm"_s).value_or(panel);
        else
            depth = m_damage.number(depthKey, 0.1, 60, u"mm"_s);
        damage.panelThickness = millimetres(panel);
        damage.depth = millimetres(depth);
        if (m_faults.size() != before || !m_kindKnown)
            return;
        // A hole goes through; a gouge or a crack deeper than the panel would be one. A dent may well be deeper.
        const bool tooDeep = (damage.kind == DamageKind::Gouge || damage.kind == DamageKind::Crack) && depth > panel;
        if (tooDeep || (through && std::abs(depth - panel) > 1e-9))
            m_damage.fault(depthKey, plainNumber(depth), FaultKind::Conflicts,
                           {m_damage.pathOf(panelKey), plainNumber(panel)});
    }

    double bevel(DamageKind kind)
    {
        const QString key = u"bevel_ratio"_s;
        // A crack is ground to a V: without any run there is none.
        const double lowest = kind == DamageKind::Crack ? 0.5 : 0;
        if (m_kindKnown && (kind == DamageKind::Hole || kind == DamageKind::Crack))
            return m_damage.number(key, lowest, 100, {});
        return m_damage.optionalNumber(key, lowest, 100, {}).value_or(0);
    }

    /// Where a question of a seam is answered. A fault when the damage is no such seam or both places hold it.
    StrictObject& placeOf(const QString& key, bool asked)
    {
        m_damage.known(key);
        m_root.known(key);
        StrictObject& place = m_root.has(key) ? m_root : m_damage;
        if (m_root.has(key) && m_damage.has(key))
            m_root.fault(key, m_root.shown(key), FaultKind::Conflicts, {m_damage.pathOf(key), m_damage.shown(key)});
        else if (place.has(key) && m_kindKnown && !asked)
            place.fault(key, place.shown(key), FaultKind::Conflicts,
                        {m_damage.pathOf(u"kind"_s), m_damage.shown(u"kind"_s)});
        return place;
    }

    std::optional<WeldKind> weld(DamageKind kind)
    {
        const QString key = u"weld"_s;
        return placeOf(key, kind == DamageKind::WeldSeam).optionalOneOf<WeldKind>(key);
    }

    std::optional<bool> adhesiveCured(DamageKind kind)
    {
        const QString key = u"adhesive_cured"_s;
        return placeOf(key, kind == DamageKind::BondSeam).optionalBoolean(key);
    }

    StrictObject m_damage;
    StrictObject& m_root;
    Faults& m_faults;
    bool m_kindKnown = false;
};

Reading readReading(StrictObject& root)
{
    Reading reading;
    reading.air = celsius(root.number(u"air_c"_s, -30, 200, u"°C"_s));
    reading.panel = celsius(root.number(u"panel_c"_s, -30, 200, u"°C"_s));
    // Above 0: at 0 there is no dew point. No hygrometer reads lower than this.
    reading.humidity = Fraction::ofHundred(root.number(u"humidity_percent"_s, 0.01, 100, u"%"_s));
    return reading;
}

} // namespace

Checked<Assessment> readAssessment(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    StrictObject root(*object, {}, faults);
    Assessment assessment;
    assessment.job = root.text(u"job"_s, longestJob);
    assessment.panel = root.text(u"panel"_s, longestPanel);
    assessment.substrate = root.oneOf<Substrate>(u"substrate"_s);
    const std::size_t before = faults.size();
    const QJsonObject damage = root.object(u"damage"_s);
    if (faults.size() == before) {
        assessment.damage = DamageReader(damage, root, faults).read();
    } else {
        root.known(u"weld"_s);
        root.known(u"adhesive_cured"_s);
    }
    assessment.rearAccess = root.optionalBoolean(u"rear_access"_s);
    assessment.surface = root.optionalOneOf<SurfaceState>(u"surface"_s);
    assessment.zone = root.optionalOneOf<Zone>(u"zone"_s);
    assessment.moisture = root.optionalOneOf<Moisture>(u"moisture"_s);
    assessment.core = root.optionalOneOf<CoreMaterial>(u"core"_s).value_or(CoreMaterial::None);
    assessment.reading = readReading(root);
    root.finish();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return assessment;
}

} // namespace strandbench
