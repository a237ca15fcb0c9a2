// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_sheet.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Dice {
public:
    explicit Dice(std::mt19937& engine) : m_engine(engine) {}
    double between(double low, double high)
    {
        const double drawn = std::uniform_real_distribution(low, high)(m_engine);
        const double part = chance(0.5) ? 100 : 1e6; // as typed on paper, and with a long tail
        return std::clamp(std::round(drawn * part) / part, low, high);
    }
    bool chance(double share) { return std::bernoulli_distribution(share)(m_engine); }
    int whole(int low, int high) { return std::uniform_int_distribution(low, high)(m_engine); }
    /// So many numbers in rising order.
    std::vector<double> rising(int count, double low, double high)
    {
        std::vector<double> all;
        for (int i = 0; i < count; ++i)
            all.push_back(between(low, high));
        std::ranges::sort(all);
        return all;
    }
    QString text(int longest)
    {
        static const QString letters = u"abcXYZ 09,;\"'\u00fc\u00e9\u6f22=.-+"_s;
        QString text(1, u'n');
        for (int i = whole(0, longest - 2); i > 0; --i)
            text += letters.at(whole(0, static_cast<int>(letters.size()) - 1));
        return text + u'z';
    }

private:
    std::mt19937& m_engine;
};

void put(SheetDraft& draft, const QStringList& paths, const std::vector<double>& values)
{
    for (qsizetype i = 0; i < paths.size(); ++i)
        draft.set(paths.at(i), values[static_cast<std::size_t>(i)]);
}

} // namespace

SheetDraft randomSheet(std::mt19937& engine)
{
    Dice dice(engine);
    const QStringList classes = allCodes<FillerClass>();
    SheetDraft draft = SheetDraft::ofClass(*fromCode<FillerClass>(classes.at(dice.whole(0, 5))));
    draft.name(dice.text(60), {});
    draft.set(u"demo"_s, dice.chance(0.2));
    draft.set(u"density_g_per_ml"_s, dice.between(0.3, 4));
    const auto working = dice.rising(3, 0.5, 60);
    const auto sanding = dice.rising(3, 61, 480);
    put(draft, {u"working_min.early"_s, u"working_min.nominal"_s, u"working_min.late"_s}, working);
    put(draft, {u"sanding_min.early"_s, u"sanding_min.nominal"_s, u"sanding_min.late"_s}, sanding);
    draft.set(u"easy_sanding_min"_s, dice.between(0.5, 480));
    draft.set(u"sanding_test_mm"_s, dice.between(0.1, 20));
    draft.set(u"reference_c"_s, dice.between(10, 40));
    draft.set(u"heat_kj_per_kg"_s, dice.between(0, 200));
    draft.set(u"specific_heat_j_per_kg_k"_s, dice.between(500, 5000));
    draft.set(u"conductivity_w_per_m_k"_s, dice.between(0.02, 5));
    const auto lifts = dice.rising(2, 0.5, 20);
    draft.set(u"greatest_lift_mm"_s, lifts[0]);
    if (!isFibreReinforced(draft.filler()))
        draft.set(u"finish_in_all_mm"_s, lifts[1]);
    put(draft,
        {u"hardener_percent.low_caution"_s, u"hardener_percent.low"_s, u"hardener_percent.nominal"_s,
         u"hardener_percent.high"_s, u"hardener_percent.high_caution"_s},
        dice.rising(5, 0.1, 10));
    draft.set(u"bead_mg_per_mm"_s, dice.between(1, 500));
    put(draft, {u"panel_c.low_caution"_s, u"panel_c.low"_s, u"panel_c.high"_s}, dice.rising(3, -30, 60));
    put(draft, {u"store_c.low"_s, u"store_c.high"_s}, dice.rising(2, -30, 60));
    draft.set(u"months_sealed"_s, dice.whole(1, 120));
    draft.set(u"names_zinc"_s, dice.chance(0.5));
    if (dice.chance(0.3))
        draft.set(u"cure.hardener_exponent"_s, dice.between(0, 3));
    if (dice.chance(0.3))
        draft.set(u"cure.n"_s, dice.between(0.5, 5));
    if (dice.chance(0.5))
        draft.setRest({{u"cells"_s, QJsonObject{{u"smc"_s, QJsonObject{{u"suitability"_s, u"no"_s},
                                                                       {u"reason"_s, dice.text(100)}}}}}});
    return draft;
}

} // namespace strandbench::test
