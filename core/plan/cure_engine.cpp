// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cure_engine.h"

#include "cure/calibrate.h"
#include "cure/greatest_lift.h"
#include "cure/rate_factor.h"
#include "cure/test_piece.h"
#include "learning/at_rate.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A case is followed for so many of the sheet's own sanding times, slowed as the coldest of it is.
constexpr double horizonInSandings = 6.0;
const Duration leastHorizon = minutes(30);
const Duration mostHorizon = minutes(24.0 * 60.0);

/// Whole minutes, so that the case reads well where it is shown.
Duration horizonFor(const ProductSheet& sheet, Temperature coldest, Fraction hardener)
{
    const Duration wanted = sheet.sanding.nominal * horizonInSandings / rateFactor(sheet, coldest, hardener);
    return std::min(mostHorizon, std::max(leastHorizon, minutes(std::ceil(inMinutes(wanted)))));
}

/// What of a sheet its calibration depends on; sheets made by hand have no hash.
QByteArray keyOf(const ProductSheet& sheet)
{
    QByteArray key = sheet.hash + sheet.id.toUtf8();
    const double figures[] = {sheet.working.nominal.value(),
                              sheet.sanding.nominal.value(),
                              sheet.sandingTestThickness.value(),
                              sheet.reference.value(),
                              sheet.density.value(),
                              sheet.specificHeat.value(),
                              sheet.conductivity.value(),
                              sheet.heat.value(),
                              sheet.hardenerNominal.value(),
                              sheet.cure.activationEnergyJoulesPerMole,
                              sheet.cure.m,
                              sheet.cure.n,
                              sheet.cure.hardenerExponent,
                              sheet.cure.maxConversionAtReference,
                              sheet.cure.maxConversionPerKelvin};
    key.append(reinterpret_cast<const char*>(figures), sizeof figures);
    return key;
}

CureAnswer<CureKinetics> calibrated(const ProductSheet& sheet)
{
    const Checked<CureKinetics> kinetics = calibrate(sheet);
    if (kinetics)
        return *kinetics;
    const Fault& fault = kinetics.error().front();
    if (fault.kind != FaultKind::OutOfRange)
        return tl::unexpected(Reason{u"sheet_never_sands"_s, {}});
    return tl::unexpected(
        Reason{u"sheet_times_unfit"_s, {minutes(fault.allowed[0].toDouble()), minutes(fault.allowed[1].toDouble())}});
}

} // namespace

// The attribute keeps the scanner of texts, which does not know the nested name, from complaining.
struct [[nodiscard]] CureEngine::Calibrations {
    std::mutex mutex;
    std::map<QByteArray, CureAnswer<CureKinetics>> kinetics; ///< by what the calibration depends on
};

CureEngine::CureEngine(Assumptions assumptions)
    : m_assumptions(std::move(assumptions)), m_calibrations(std::make_shared<Calibrations>())
{}

CureEngine CureEngine::with(const Assumptions& assumptions) const
{
    CureEngine other(*this);
    other.m_assumptions = assumptions;
    return other;
}

CureEngine CureEngine::with(const CureRates& rates) const
{
    CureEngine other(*this);
    other.m_rates = rates;
    return other;
}

Temperature CureEngine::fillerStart(Temperature air) const { return air + m_assumptions.fillerOverAir; }

CureAnswer<CureKinetics> CureEngine::kineticsOf(const ProductSheet& sheet) const
{
    auto& [mutex, kinetics] = *m_calibrations;
    const std::lock_guard lock(mutex);
    const QByteArray key = keyOf(sheet);
    const auto known = kinetics.find(key);
    if (known != kinetics.end())
        return known->second;
    return kinetics.emplace(key, calibrated(sheet)).first->second;
}

CureAnswer<CureCase> CureEngine::layerCase(const LayerQuestion& question) const
{
    const CureAnswer<CureKinetics> kinetics = kineticsOf(question.sheet);
    if (!kinetics)
        return tl::unexpected(kinetics.error());
    CureCase layer = plainCase(question.sheet, *kinetics, question.laid, question.reading.air);
    layer.temperature = fillerStart(question.reading.air);
    layer.hardener = question.hardener;
    layer.stack = question.stack;
    layer.front = m_assumptions.faceFront;
    layer.back = m_assumptions.faceBack;
    layer.horizon =
        horizonFor(question.sheet, std::min(question.reading.air, question.reading.panel), question.hardener);
    const auto rate = m_rates.find(versionOf(question.sheet));
    return rate == m_rates.end() ? layer : atRate(layer, rate->second);
}

CureAnswer<LayerCure> CureEngine::solve(const CureCase& cureCase, CureUntil until) const
{
    CureFineness fine;
    fine.until = until;
    const CureOutcome outcome = solveCure(cureCase, fine);
    if (!outcome)
        return tl::unexpected(Reason{u"cure_unsolved"_s, {outcome.error().at}});
    if (!outcome->gel || !outcome->sand) {
        if (cureCase.horizon >= mostHorizon)
            return tl::unexpected(Reason{u"never_sands"_s, {mostHorizon}});
        CureCase longer = cureCase;
        longer.horizon = std::min(mostHorizon, Duration(cureCase.horizon * 4.0));
        return solve(longer, until);
    }
    return LayerCure{*outcome->gel, *outcome->sand, outcome->peak, cureCase};
}

CureAnswer<LayerCure> CureEngine::layer(const LayerQuestion& question) const
{
    return layerCase(question).and_then([this](const CureCase& cureCase) { return solve(cureCase); });
}

CureAnswer<CureCase> CureEngine::boardCase(const ProductSheet& sheet, Temperature air, Fraction hardener,
                                           Length puddleHeight) const
{
    const Reading onBoard{air, air, {}};
    return layerCase(
        {sheet, onBoard, hardener, puddleHeight, {{m_assumptions.boardThickness, m_assumptions.boardMaterial, air}}});
}

CureAnswer<Duration> CureEngine::solveBoard(const CureCase& puddle) const
{
    CureFineness fine;
    fine.until = CureUntil::Marks;
    const CureOutcome outcome = solveCure(puddle, fine);
    if (!outcome)
        return tl::unexpected(Reason{u"cure_unsolved"_s, {outcome.error().at}});
    if (!outcome->gel)
        return tl::unexpected(Reason{u"never_sands"_s, {puddle.horizon}});
    return *outcome->gel;
}

CureAnswer<Duration> CureEngine::boardGel(const ProductSheet& sheet, Temperature air, Fraction hardener,
                                          Length puddleHeight) const
{
    return boardCase(sheet, air, hardener, puddleHeight).and_then([this](const CureCase& puddle) {
        return solveBoard(puddle);
    });
}

CureAnswer<std::optional<Length>> CureEngine::greatestLift(const LayerQuestion& question, Temperature limit) const
{
    const CureAnswer<CureCase> layer = layerCase(question);
    if (!layer)
        return tl::unexpected(layer.error());
    const auto caseOfThickness = [&](Length thickness) {
        CureCase each = *layer;
        each.thickness = thickness;
        return each;
    };
    return strandbench::greatestLift(caseOfThickness, limit, question.laid);
}

QString CureEngine::name() { return u"cure-1"_s; }

BatchTimes batchTimes(const LayerCure& layer, Duration boardGel, const ProductSheet& sheet)
{
    const Temperature panel =
        layer.cureCase.stack.empty() ? layer.cureCase.temperature : layer.cureCase.stack.back().temperature;
    return {boardGel, layer.gel, layer.sand, sheet.easySanding / rateFactor(sheet, panel, layer.cureCase.hardener)};
}

} // namespace strandbench
