// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheets.h"

#include "exchange/sheet_hazards.h"
#include "exchange/strict_json.h"
#include "substrate/decision.h"

#include <QCryptographicHash>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Reads one sheet's members. Ranges: what the trade sells and the cure engine takes, whichever is narrower.
class SheetReader {
public:
    SheetReader(const QJsonObject& json, Faults& faults) : m_root(json, {}, faults), m_faults(faults) {}

    ProductSheet read()
    {
        identity();
        times();
        material();
        hardener();
        limits();
        cureLaw();
        cells();
        readSheetHazards(m_root, m_sheet);
        m_root.finish();
        return std::move(m_sheet);
    }

private:
    /// A fault when `low` is above `high`, two fields read before.
    void inOrder(StrictObject& object, const QString& lowKey, double low, const QString& highKey, double high)
    {
        if (low > high)
            object.fault(lowKey, plainNumber(low), FaultKind::Conflicts, {object.pathOf(highKey), plainNumber(high)});
    }

    void identity()
    {
        m_sheet.id = m_root.text(u"id"_s, 40);
        const bool plain = std::all_of(m_sheet.id.cbegin(), m_sheet.id.cend(), [](QChar c) {
            return (c >= u'a' && c <= u'z') || (c >= u'0' && c <= u'9') || c == u'_';
        });
        if (!plain)
            m_root.fault(u"id"_s, m_sheet.id, FaultKind::NotReadable, {u"short_strand_2"_s});
        m_sheet.name = m_root.text(u"name"_s, 60);
        m_sheet.demo = m_root.boolean(u"demo"_s);
        m_sheet.fillerClass = m_root.oneOf<FillerClass>(u"filler_class"_s);
    }

    StatedTime stated(const QString& key, double lowest, double highest)
    {
        StatedTime time;
        m_root.nested(key, [&](StrictObject& object) {
            const std::size_t before = m_faults.size();
            const double nominal = object.number(u"nominal"_s, lowest, highest, u"min"_s);
            const double early = object.number(u"early"_s, lowest, highest, u"min"_s);
            const double late = object.number(u"late"_s, lowest, highest, u"min"_s);
            time = {minutes(nominal), minutes(early), minutes(late)};
            if (m_faults.size() != before)
                return; // no order among numbers that are not there
            inOrder(object, u"early"_s, early, u"nominal"_s, nominal);
            inOrder(object, u"nominal"_s, nominal, u"late"_s, late);
        });
        return time;
    }

    void times()
    {
        const std::size_t before = m_faults.size();
        m_sheet.working = stated(u"working_min"_s, 0.5, 120);
        m_sheet.sanding = stated(u"sanding_min"_s, 1, 480);
        if (m_faults.size() == before && m_sheet.sanding.nominal <= m_sheet.working.nominal)
            m_faults.push_back({u"sanding_min.nominal"_s,
                                plainNumber(inMinutes(m_sheet.sanding.nominal)),
                                FaultKind::Conflicts,
                                {u"working_min.nominal"_s, plainNumber(inMinutes(m_sheet.working.nominal))}});
        m_sheet.easySanding = minutes(m_root.number(u"easy_sanding_min"_s, 0.5, 480, u"min"_s));
        m_sheet.sandingTestThickness = millimetres(m_root.number(u"sanding_test_mm"_s, 0.1, 20, u"mm"_s));
        m_sheet.reference = celsius(m_root.number(u"reference_c"_s, 10, 40, u"°C"_s));
    }

    void material()
    {
        m_sheet.density = gramsPerMillilitre(m_root.number(u"density_g_per_ml"_s, 0.3, 4, u"g/ml"_s));
        const std::size_t before = m_faults.size();
        const double heat = m_root.number(u"heat_kj_per_kg"_s, 0, 1000, u"kJ/kg"_s);
        const double specificHeat = m_root.number(u"specific_heat_j_per_kg_k"_s, 500, 5000, u"J/(kg K)"_s);
        // The cure engine takes no adiabatic rise beyond 400 K: such a sheet has a slip in one of the two.
        if (m_faults.size() == before && heat * 1000 > 400 * specificHeat)
            m_root.fault(u"heat_kj_per_kg"_s, plainNumber(heat), FaultKind::Conflicts,
                         {u"specific_heat_j_per_kg_k"_s, plainNumber(specificHeat)});
        m_sheet.heat = joulesPerKilogram(heat * 1000);
        m_sheet.specificHeat = joulesPerKilogramKelvin(specificHeat);
        m_sheet.conductivity = wattsPerMetreKelvin(m_root.number(u"conductivity_w_per_m_k"_s, 0.02, 5, u"W/(m K)"_s));
        thickness();
        m_sheet.shrinkage = Fraction::ofHundred(m_root.number(u"shrinkage_percent"_s, 0, 20, u"%"_s));
        m_sheet.styrene = Fraction::ofHundred(m_root.number(u"styrene_percent"_s, 0, 60, u"%"_s));
    }

    void thickness()
    {
        const std::size_t before = m_faults.size();
        const double lift = m_root.number(u"greatest_lift_mm"_s, 0.5, 20, u"mm"_s);
        m_sheet.greatestLift = millimetres(lift);
        if (!isFibreReinforced(m_sheet.fillerClass)) {
            const double inAll = m_root.number(u"finish_in_all_mm"_s, 0.5, 20, u"mm"_s);
            m_sheet.finishInAll = millimetres(inAll);
            if (m_faults.size() == before)
                inOrder(m_root, u"greatest_lift_mm"_s, lift, u"finish_in_all_mm"_s, inAll);
        } else if (!fromCode<FillerClass>(m_root.shown(u"filler_class"_s))) {
            m_root.known(u"finish_in_all_mm"_s); // whether it belongs is not known
        }
    }

    void hardener()
    {
        m_root.nested(u"hardener_percent"_s, [&](StrictObject& object) {
            const std::size_t before = m_faults.size();
            const QStringList keys{u"low_caution"_s, u"low"_s, u"nominal"_s, u"high"_s, u"high_caution"_s};
            std::vector<double> percent;
            for (const QString& key : keys)
                percent.push_back(object.number(key, 0.1, 10, u"%"_s));
            if (m_faults.size() == before)
                for (std::size_t i = 1; i < percent.size(); ++i)
                    inOrder(object, keys.at(static_cast<int>(i) - 1), percent[i - 1], keys.at(static_cast<int>(i)),
                            percent[i]);
            m_sheet.hardenerLowCaution = Fraction::ofHundred(percent[0]);
            m_sheet.hardenerLow = Fraction::ofHundred(percent[1]);
            m_sheet.hardenerNominal = Fraction::ofHundred(percent[2]);
            m_sheet.hardenerHigh = Fraction::ofHundred(percent[3]);
            m_sheet.hardenerHighCaution = Fraction::ofHundred(percent[4]);
        });
        m_sheet.peroxideInHardener = Fraction::ofHundred(m_root.number(u"peroxide_percent"_s, 1, 100, u"%"_s));
        m_sheet.beadMass = milligramsPerMillimetre(m_root.number(u"bead_mg_per_mm"_s, 1, 500, u"mg/mm"_s));
    }

    void limits()
    {
        m_root.nested(u"panel_c"_s, [&](StrictObject& object) {
            const std::size_t before = m_faults.size();
            const double caution = object.number(u"low_caution"_s, -30, 60, u"°C"_s);
            const double low = object.number(u"low"_s, -30, 60, u"°C"_s);
            const double high = object.number(u"high"_s, -30, 60, u"°C"_s);
            if (m_faults.size() == before) {
                inOrder(object, u"low_caution"_s, caution, u"low"_s, low);
                inOrder(object, u"low"_s, low, u"high"_s, high);
            }
            m_sheet.panelLowCaution = celsius(caution);
            m_sheet.panelLow = celsius(low);
            m_sheet.panelHigh = celsius(high);
        });
        m_sheet.peakLimit = celsius(m_root.number(u"peak_limit_c"_s, 40, 200, u"°C"_s));
        m_root.nested(u"store_c"_s, [&](StrictObject& object) {
            const std::size_t before = m_faults.size();
            const double low = object.number(u"low"_s, -30, 60, u"°C"_s);
            const double high = object.number(u"high"_s, -30, 60, u"°C"_s);
            if (m_faults.size() == before)
                inOrder(object, u"low"_s, low, u"high"_s, high);
            m_sheet.storeLow = celsius(low);
            m_sheet.storeHigh = celsius(high);
        });
        m_sheet.monthsSealed = static_cast<int>(m_root.integer(u"months_sealed"_s, 1, 120, {}));
        m_sheet.monthsOpened = static_cast<int>(m_root.integer(u"months_opened"_s, 1, 120, {}));
        m_sheet.namesZinc = m_root.boolean(u"names_zinc"_s);
    }

    /// Every member may be left out: the model's own value then stands. Ranges: the cure case's.
    void cureLaw()
    {
        if (!m_root.has(u"cure"_s)) {
            m_root.known(u"cure"_s);
            return;
        }
        m_root.nested(u"cure"_s, [&](StrictObject& object) {
            CureLaw& law = m_sheet.cure;
            const auto take = [&](double& member, const QString& key, double lowest, double highest,
                                  const QString& unit) {
                member = object.optionalNumber(key, lowest, highest, unit).value_or(member);
            };
            take(law.activationEnergyJoulesPerMole, u"activation_energy_j_per_mol"_s, 0, 300'000, u"J/mol"_s);
            take(law.m, u"m"_s, 0, 5, {});
            if (law.m > 0 && law.m < 0.05)
                object.fault(u"m"_s, object.shown(u"m"_s), FaultKind::OutOfRange, {u"0.05"_s, u"5"_s, {}});
            take(law.n, u"n"_s, 0.5, 5, {});
            take(law.hardenerExponent, u"hardener_exponent"_s, 0, 3, {});
            take(law.maxConversionAtReference, u"max_conversion_at_reference"_s, 0.05, 1, {});
            take(law.maxConversionPerKelvin, u"max_conversion_per_k"_s, 0, 0.02, u"1/K"_s);
        });
    }

    /// The sheet's own cells of the decision table; columns left out are the table's.
    void cells()
    {
        if (!m_root.has(u"cells"_s)) {
            m_root.known(u"cells"_s);
            return;
        }
        m_root.nested(u"cells"_s, [&](StrictObject& columns) {
            for (const QString& column : DecisionTable::columns()) {
                columns.known(column);
                if (!columns.has(column))
                    continue;
                const std::size_t before = m_faults.size();
                const QJsonObject json = columns.object(column);
                if (m_faults.size() != before)
                    continue;
                StrictObject cell(json, columns.pathOf(column), m_faults);
                const auto suitability = cell.oneOf<Suitability>(u"suitability"_s);
                m_sheet.cells[column] = {suitability, cell.text(u"reason"_s, 120)};
                cell.finish();
            }
        });
    }

    StrictObject m_root;
    Faults& m_faults;
    ProductSheet m_sheet;
};

} // namespace

Checked<ProductSheet> readSheet(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    ProductSheet sheet = SheetReader(*object, faults).read();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    sheet.source = json;
    sheet.hash = QCryptographicHash::hash(json, QCryptographicHash::Sha256);
    return sheet;
}

} // namespace strandbench
