// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/cure_json.h"

#include "exchange/plan_json.h"
#include "exchange/strict_json.h"

#include <QJsonDocument>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double lowestC = -30;
constexpr double highestC = 200;
constexpr double weekInSeconds = 7.0 * 24.0 * 3600.0;
constexpr int mostStackLayers = 12;
constexpr int mostAirPoints = 1000;
constexpr double greatestRise = 400; ///< heat / specific heat, K

class CaseReader {
public:
    CaseReader(const QJsonObject& json, Faults& faults) : m_root(json, {}, faults), m_faults(faults) {}

    CureCase read()
    {
        m_root.nested(u"kinetics"_s, [this](StrictObject& object) { kinetics(object); });
        m_root.nested(u"filler"_s, [this](StrictObject& object) { filler(object); });
        m_root.nested(u"layer"_s, [this](StrictObject& object) { layer(object); });
        stack();
        m_root.nested(u"air"_s, [this](StrictObject& object) { air(object); });
        m_case.horizon = seconds(m_root.number(u"until_s"_s, 1, weekInSeconds, u"s"_s));
        m_root.finish();
        return std::move(m_case);
    }

private:
    static Temperature temperature(StrictObject& object, const QString& key)
    {
        return celsius(object.number(key, lowestC, highestC, u"°C"_s));
    }

    void kinetics(StrictObject& object)
    {
        CureKinetics& kinetics = m_case.kinetics;
        const std::size_t before = m_faults.size();
        const double k1 = object.number(u"k1_per_s"_s, 0, 1, u"1/s"_s);
        const double k2 = object.number(u"k2_per_s"_s, 0, 1, u"1/s"_s);
        if (m_faults.size() == before && k1 <= 0 && k2 <= 0)
            object.fault(u"k1_per_s"_s, plainNumber(k1), FaultKind::Conflicts,
                         {object.pathOf(u"k2_per_s"_s), plainNumber(k2)});
        kinetics.k1 = perSecond(k1);
        kinetics.k2 = perSecond(k2);
        law(object);
        kinetics.reference = celsius(object.number(u"reference_temperature_c"_s, 0, 200, u"°C"_s));
        kinetics.referenceHardener =
            Fraction::ofHundred(object.number(u"reference_hardener_percent"_s, 0.1, 10, u"%"_s));
        const std::size_t beforeMarks = m_faults.size();
        const double gel = object.number(u"gel_conversion"_s, 0.001, 0.999, {});
        const double sand = object.number(u"sand_conversion"_s, 0.001, 0.999, {});
        if (m_faults.size() == beforeMarks && gel > sand)
            object.fault(u"gel_conversion"_s, plainNumber(gel), FaultKind::Conflicts,
                         {object.pathOf(u"sand_conversion"_s), plainNumber(sand)});
        kinetics.gel = Fraction::ofOne(gel);
        kinetics.sand = Fraction::ofOne(sand);
    }

    void law(StrictObject& object)
    {
        CureLaw& law = m_case.kinetics.law;
        const std::size_t before = m_faults.size();
        law.m = object.number(u"m"_s, 0, 5, {});
        if (m_faults.size() == before && law.m > 0 && law.m < 0.05)
            object.fault(u"m"_s, plainNumber(law.m), FaultKind::OutOfRange, {u"0.05"_s, u"5"_s, {}});
        law.n = object.number(u"n"_s, 0.5, 5, {});
        law.activationEnergyJoulesPerMole = object.number(u"activation_energy_j_per_mol"_s, 0, 300'000, u"J/mol"_s);
        law.hardenerExponent = object.number(u"hardener_exponent"_s, 0, 3, {});
        law.maxConversionAtReference = object.number(u"max_conversion_at_reference"_s, 0.05, 1, {});
        law.maxConversionPerKelvin = object.number(u"max_conversion_per_k"_s, 0, 0.02, u"1/K"_s);
    }

    static ThermalMaterial material(StrictObject& object)
    {
        return {kilogramsPerCubicMetre(object.number(u"density_kg_per_m3"_s, 10, 20'000, u"kg/m³"_s)),
                joulesPerKilogramKelvin(object.number(u"specific_heat_j_per_kg_k"_s, 50, 10'000, u"J/(kg K)"_s)),
                wattsPerMetreKelvin(object.number(u"conductivity_w_per_m_k"_s, 0.01, 500, u"W/(m K)"_s))};
    }

    void filler(StrictObject& object)
    {
        const QString heatKey = u"heat_of_reaction_j_per_kg"_s;
        const std::size_t before = m_faults.size();
        m_case.filler = material(object);
        const double heat = object.number(heatKey, 0, 1e6, u"J/kg"_s);
        m_case.heat = joulesPerKilogram(heat);
        if (m_faults.size() == before && heat > greatestRise * m_case.filler.specificHeat.value())
            object.fault(heatKey, plainNumber(heat), FaultKind::OutOfRange,
                         {u"0"_s, plainNumber(greatestRise * m_case.filler.specificHeat.value()), u"J/kg"_s});
    }

    void layer(StrictObject& object)
    {
        m_case.thickness = millimetres(object.number(u"thickness_mm"_s, 0.1, 60, u"mm"_s));
        m_case.hardener = Fraction::ofHundred(object.number(u"hardener_percent"_s, 0.1, 10, u"%"_s));
        m_case.temperature = temperature(object, u"temperature_c"_s);
        m_case.initialConversion =
            Fraction::ofOne(object.optionalNumber(u"initial_conversion"_s, 0, 0.99, {}).value_or(0));
    }

    void stack()
    {
        const std::size_t before = m_faults.size();
        const auto layers = m_root.objects(u"stack"_s);
        if (m_faults.size() == before && layers.size() > mostStackLayers)
            m_root.fault(u"stack"_s, QString::number(layers.size()), FaultKind::OutOfRange,
                         {u"0"_s, QString::number(mostStackLayers), u"layers"_s});
        for (const auto& [path, json] : layers) {
            StrictObject object(json, path, m_faults);
            StackLayer layer;
            layer.thickness = millimetres(object.number(u"thickness_mm"_s, 0.05, 100, u"mm"_s));
            layer.material = material(object);
            layer.temperature = temperature(object, u"temperature_c"_s);
            object.finish();
            m_case.stack.push_back(layer);
        }
    }

    void air(StrictObject& object)
    {
        const QString key = u"temperature_c"_s;
        if (object.holdsList(key))
            airPoints(object, key);
        else
            m_case.air = {{seconds(0), temperature(object, key)}};
        m_case.front = wattsPerSquareMetreKelvin(object.number(u"front_w_per_m2_k"_s, 0, 1e6, u"W/(m² K)"_s));
        m_case.back = wattsPerSquareMetreKelvin(object.number(u"back_w_per_m2_k"_s, 0, 1e6, u"W/(m² K)"_s));
    }

    /// Points [t_s, c], their times rising.
    void airPoints(StrictObject& object, const QString& key)
    {
        const QJsonArray points = object.list(key);
        if (points.isEmpty() || points.size() > mostAirPoints)
            object.fault(key, QString::number(points.size()), FaultKind::OutOfRange,
                         {u"1"_s, QString::number(mostAirPoints), u"points"_s});
        double last = -1;
        for (int i = 0; i < points.size() && i < mostAirPoints; ++i) {
            const QString place = u"%1[%2]"_s.arg(key).arg(i);
            const QJsonArray point = points.at(i).toArray();
            if (point.size() != 2 || !point.at(0).isDouble() || !point.at(1).isDouble()) {
                object.fault(place, QString::fromUtf8(compactJson(points.at(i))), FaultKind::NotReadable,
                             {u"[600, 23.5]"_s});
                continue;
            }
            const double at = point.at(0).toDouble();
            const double c = point.at(1).toDouble();
            if (!(at >= 0 && at <= weekInSeconds))
                object.fault(place, plainNumber(at), FaultKind::OutOfRange,
                             {u"0"_s, plainNumber(weekInSeconds), u"s"_s});
            else if (at <= last)
                object.fault(place, plainNumber(at), FaultKind::Conflicts,
                             {object.pathOf(u"%1[%2]"_s.arg(key).arg(i - 1)), plainNumber(last)});
            if (!(c >= lowestC && c <= highestC))
                object.fault(place, plainNumber(c), FaultKind::OutOfRange,
                             {plainNumber(lowestC), plainNumber(highestC), u"°C"_s});
            last = std::max(last, at);
            m_case.air.push_back({seconds(at), celsius(c)});
        }
    }

    StrictObject m_root;
    Faults& m_faults;
    CureCase m_case;
};

QJsonObject kineticsToJson(const CureKinetics& kinetics)
{
    return {
        {u"k1_per_s"_s, tidy(inPerSecond(kinetics.k1))},
        {u"k2_per_s"_s, tidy(inPerSecond(kinetics.k2))},
        {u"m"_s, tidy(kinetics.law.m)},
        {u"n"_s, tidy(kinetics.law.n)},
        {u"activation_energy_j_per_mol"_s, tidy(kinetics.law.activationEnergyJoulesPerMole)},
        {u"hardener_exponent"_s, tidy(kinetics.law.hardenerExponent)},
        {u"reference_temperature_c"_s, tidy(inCelsius(kinetics.reference))},
        {u"reference_hardener_percent"_s, tidy(kinetics.referenceHardener.percent())},
        {u"max_conversion_at_reference"_s, tidy(kinetics.law.maxConversionAtReference)},
        {u"max_conversion_per_k"_s, tidy(kinetics.law.maxConversionPerKelvin)},
        {u"gel_conversion"_s, tidy(kinetics.gel.value())},
        {u"sand_conversion"_s, tidy(kinetics.sand.value())},
    };
}

QJsonObject materialToJson(const ThermalMaterial& material)
{
    return {
        {u"density_kg_per_m3"_s, tidy(material.density.value())},
        {u"specific_heat_j_per_kg_k"_s, tidy(material.specificHeat.value())},
        {u"conductivity_w_per_m_k"_s, tidy(material.conductivity.value())},
    };
}

QJsonValue airToJson(const std::vector<AirPoint>& air)
{
    if (air.size() == 1)
        return tidy(inCelsius(air.front().temperature));
    QJsonArray points;
    for (const AirPoint& point : air)
        points << QJsonArray{tidy(inSeconds(point.at)), tidy(inCelsius(point.temperature))};
    return points;
}

} // namespace

Checked<CureCase> readCureCase(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    CureCase cureCase = CaseReader(*object, faults).read();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return cureCase;
}

QJsonObject cureCaseToJson(const CureCase& cureCase)
{
    QJsonObject filler = materialToJson(cureCase.filler);
    filler[u"heat_of_reaction_j_per_kg"_s] = tidy(cureCase.heat.value());
    QJsonArray stack;
    for (const StackLayer& layer : cureCase.stack) {
        QJsonObject json = materialToJson(layer.material);
        json[u"thickness_mm"_s] = tidy(inMillimetres(layer.thickness));
        json[u"temperature_c"_s] = tidy(inCelsius(layer.temperature));
        stack << json;
    }
    return {
        {u"kinetics"_s, kineticsToJson(cureCase.kinetics)},
        {u"filler"_s, filler},
        {u"layer"_s, QJsonObject{{u"thickness_mm"_s, tidy(inMillimetres(cureCase.thickness))},
                                 {u"hardener_percent"_s, tidy(cureCase.hardener.percent())},
                                 {u"temperature_c"_s, tidy(inCelsius(cureCase.temperature))},
                                 {u"initial_conversion"_s, tidy(cureCase.initialConversion.value())}}},
        {u"stack"_s, stack},
        {u"air"_s, QJsonObject{{u"temperature_c"_s, airToJson(cureCase.air)},
                               {u"front_w_per_m2_k"_s, tidy(cureCase.front.value())},
                               {u"back_w_per_m2_k"_s, tidy(cureCase.back.value())}}},
        {u"until_s"_s, tidy(inSeconds(cureCase.horizon))},
    };
}

QJsonObject cureResultToJson(const CureResult& result)
{
    const auto mark = [](const std::optional<Duration>& at) {
        return at ? QJsonValue(tidy(inSeconds(*at))) : QJsonValue();
    };
    QJsonArray curve;
    for (const CurvePoint& point : result.curve)
        curve << QJsonObject{{u"t_s"_s, tidy(inSeconds(point.at))},
                             {u"face_c"_s, tidy(inCelsius(point.face))},
                             {u"hottest_c"_s, tidy(inCelsius(point.hottest))},
                             {u"mean_conversion"_s, tidy(point.mean.value())}};
    return {
        {u"gel_s"_s, mark(result.gel)},
        {u"sand_s"_s, mark(result.sand)},
        {u"peak_c"_s, tidy(inCelsius(result.peak))},
        {u"peak_s"_s, tidy(inSeconds(result.peakAt))},
        {u"final_mean_conversion"_s, tidy(result.finalMean.value())},
        {u"curve"_s, curve},
    };
}

} // namespace strandbench
