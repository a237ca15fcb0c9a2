// SPDX-License-Identifier: GPL-3.0-or-later
// A cure case: within the ranges of its contract, and read again as it was written. It is not solved here.
#include "exchange/cure_json.h"
#include "fuzz.h"

#include <QJsonDocument>

namespace strandbench::fuzz {
namespace {

void checkMaterial(const ThermalMaterial& material)
{
    requireWithin(material.density.value(), 10, 20'000, "density");
    requireWithin(material.specificHeat.value(), 50, 10'000, "specific heat");
    requireWithin(material.conductivity.value(), 0.01, 500, "conductivity");
}

void checkKinetics(const CureKinetics& kinetics)
{
    requireWithin(inPerSecond(kinetics.k1), 0, 1, "k1");
    requireWithin(inPerSecond(kinetics.k2), 0, 1, "k2");
    require(inPerSecond(kinetics.k1) > 0 || inPerSecond(kinetics.k2) > 0, "it reacts");
    require(kinetics.law.m == 0 || (kinetics.law.m >= 0.05 && kinetics.law.m <= 5), "m");
    requireWithin(kinetics.law.n, 0.5, 5, "n");
    requireWithin(kinetics.law.activationEnergyJoulesPerMole, 0, 300'000, "activation energy");
    requireWithin(kinetics.gel.value(), 0.001, 0.999, "gel");
    requireWithin(kinetics.sand.value(), 0.001, 0.999, "sand");
    require(kinetics.gel <= kinetics.sand, "it gels before it sands");
}

void check(const CureCase& cureCase)
{
    checkKinetics(cureCase.kinetics);
    checkMaterial(cureCase.filler);
    requireWithin(cureCase.heat.value() / cureCase.filler.specificHeat.value(), 0, 400, "rise");
    requireWithin(inMillimetres(cureCase.thickness), 0.1, 60, "layer");
    requireWithin(inCelsius(cureCase.temperature), -30, 200, "temperature");
    requireWithin(cureCase.initialConversion.value(), 0, 0.99, "conversion");
    requireWithin(inSeconds(cureCase.horizon), 1, 7.0 * 24 * 3600, "horizon");
    require(cureCase.stack.size() <= 12, "layers");
    for (const StackLayer& each : cureCase.stack)
        checkMaterial(each.material);
    require(!cureCase.air.empty() && cureCase.air.size() <= 1000, "points of air");
    for (std::size_t i = 0; i < cureCase.air.size(); ++i) {
        requireWithin(inCelsius(cureCase.air[i].temperature), -30, 200, "air");
        require(i == 0 || cureCase.air[i - 1].at < cureCase.air[i].at, "times rise");
    }
}

QByteArray written(const CureCase& cureCase) { return QJsonDocument(cureCaseToJson(cureCase)).toJson(); }

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const Checked<CureCase> cureCase = readCureCase(fuzz::bytesOf(data, size));
    if (!cureCase) {
        fuzz::requireTold(cureCase.error());
        return 0;
    }
    fuzz::check(*cureCase);
    // Written with 15 digits: the first time the last of them may go, from then on it stays as it is.
    const QByteArray once = fuzz::written(*cureCase);
    const Checked<CureCase> again = readCureCase(once);
    fuzz::require(again.has_value(), "what was written is accepted");
    fuzz::check(*again);
    fuzz::require(fuzz::written(*again) == once, "written again it is the same");
    return 0;
}
