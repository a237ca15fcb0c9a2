// SPDX-License-Identifier: GPL-3.0-or-later
#include "referee_system.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace strandbench::test {
namespace {

constexpr int degree = 6;
/// Places looked at between the ends of an element for the highest value, beside the nodes.
constexpr int places = 12;
constexpr double stackGrowth = 2.5;

double spread(const ThermalMaterial& material)
{
    return std::sqrt(material.conductivity.value() / (material.density.value() * material.specificHeat.value()));
}

/// Back to front. At the contact, widths alike over the root of the diffusivity: the shared node then starts at the
/// contact temperature of two half-spaces (Incropera, eq. 5.63).
std::vector<Element> elementsOf(const CureCase& cureCase, int freshElements)
{
    const double whole = cureCase.thickness.value();
    const auto edge = [&](int i) { return whole * (1.0 - std::cos(std::numbers::pi * i / freshElements)) / 2.0; };
    std::vector<Element> stack;
    double reach = edge(1) / spread(cureCase.filler);
    for (auto layer = cureCase.stack.rbegin(); layer != cureCase.stack.rend(); ++layer) {
        double left = layer->thickness.value();
        while (left > 0.0) {
            const double wanted = reach * spread(layer->material);
            const double width = left < 1.5 * wanted ? left : wanted;
            stack.push_back({width, layer->material, inKelvin(layer->temperature)});
            left -= width;
            reach = width / spread(layer->material) * (left > 0.0 ? stackGrowth : 1.0);
        }
    }
    std::vector<Element> all(stack.rbegin(), stack.rend());
    for (int i = 0; i < freshElements; ++i)
        all.push_back({edge(i + 1) - edge(i), cureCase.filler, inKelvin(cureCase.temperature)});
    return all;
}

} // namespace

System::System(const CureCase& cureCase, int freshElements)
    : m_case(cureCase), m_lobatto(degree), m_freshElements(static_cast<std::size_t>(freshElements))
{
    assemble(elementsOf(cureCase, freshElements));
    for (int i = 0; i <= places; ++i)
        m_between.push_back(m_lobatto.weightsAt(-1.0 + 2.0 * i / places));
    const CureKinetics& kinetics = cureCase.kinetics;
    m_phi = std::pow(cureCase.hardener.value() / kinetics.referenceHardener.value(), kinetics.law.hardenerExponent);
}

std::vector<double> System::start() const
{
    std::vector<double> y(m_start);
    y.resize(unknowns(), m_case.initialConversion.value());
    return y;
}

void System::assemble(const std::vector<Element>& elements)
{
    const std::size_t count = elements.size() * degree + 1;
    m_fresh = (elements.size() - m_freshElements) * degree;
    m_mass.assign(count, 0.0);
    m_heat.assign(count, 0.0);
    m_start.assign(count, 0.0);
    m_stiffness.assign(count, std::vector<double>(count, 0.0));
    for (std::size_t e = 0; e < elements.size(); ++e) {
        const auto& [width, material, temperature] = elements[e];
        if (e > 0 && temperature != elements[e - 1].temperature)
            m_secondsOfContact = std::max(m_secondsOfContact, std::pow(width / spread(material), 2));
        for (std::size_t i = 0; i <= degree; ++i) {
            const std::size_t row = e * degree + i;
            const double kilograms = material.density.value() * m_lobatto.weights[i] * width / 2.0;
            const double capacity = kilograms * material.specificHeat.value();
            m_mass[row] += capacity;
            m_start[row] += capacity * temperature / temperatureUnit;
            if (e * degree >= m_fresh)
                m_heat[row] += kilograms * m_case.heat.value();
            for (std::size_t j = 0; j <= degree; ++j)
                for (std::size_t q = 0; q <= degree; ++q)
                    m_stiffness[row][e * degree + j] += material.conductivity.value() * 2.0 / width *
                                                        m_lobatto.weights[q] * m_lobatto.slope[q][i] *
                                                        m_lobatto.slope[q][j];
        }
    }
    for (std::size_t i = 0; i < count; ++i)
        m_start[i] /= m_mass[i];
    m_stiffness.front().front() += m_case.back.value();
    m_stiffness.back().back() += m_case.front.value();
}

double System::highest(const double* nodal) const
{
    double best = nodal[0];
    for (std::size_t e = 0; e < m_freshElements; ++e)
        for (const std::vector<double>& weights : m_between) {
            double value = 0.0;
            for (std::size_t i = 0; i <= degree; ++i)
                value += weights[i] * nodal[e * degree + i];
            best = std::max(best, value);
        }
    return best;
}

void System::cure(double kelvin, double conversion, double& rate, double& byKelvin, double& byConversion) const
{
    const CureKinetics& kinetics = m_case.kinetics;
    const CureLaw& law = kinetics.law;
    rate = byKelvin = byConversion = 0.0;
    const double reference = inKelvin(kinetics.reference);
    const double straight = law.maxConversionAtReference + law.maxConversionPerKelvin * (kelvin - reference);
    const double ceiling = std::min(1.0, std::max(0.0, straight));
    if (conversion >= ceiling)
        return;
    const double room = ceiling - conversion;
    const double overR = law.activationEnergyJoulesPerMole / 8.314462618;
    const double arrhenius = m_phi * std::exp(-overR * (1.0 / kelvin - 1.0 / reference));
    const double cured = std::max(conversion, 0.0);
    const double drive = inPerSecond(kinetics.k1) + inPerSecond(kinetics.k2) * std::pow(cured, law.m);
    rate = arrhenius * drive * std::pow(room, law.n);
    const double byRoom = arrhenius * drive * law.n * std::pow(room, law.n - 1.0);
    byKelvin = rate * overR / (kelvin * kelvin) + (straight == ceiling ? byRoom * law.maxConversionPerKelvin : 0.0);
    byConversion = arrhenius * std::pow(room, law.n) * inPerSecond(kinetics.k2) * law.m *
                       std::pow(std::max(cured, 1e-9), law.m - 1.0) -
                   byRoom;
}

void System::rates(const double* y, double* out) const
{
    const double air = inKelvin(m_case.air.front().temperature) / temperatureUnit;
    const std::size_t count = nodes();
    for (std::size_t i = 0; i < count; ++i) {
        // A row reaches over its own element, or over the two that share the node.
        const std::size_t from = i < degree ? 0 : (i - 1) / degree * degree;
        const std::size_t to = std::min(count - 1, (i / degree + 1) * degree);
        double sum = 0.0;
        for (std::size_t j = from; j <= to; ++j)
            sum -= m_stiffness[i][j] * y[j];
        out[i] = sum;
    }
    out[0] += m_case.back.value() * air;
    out[count - 1] += m_case.front.value() * air;
    for (std::size_t i = m_fresh; i < count; ++i) {
        double rate = 0.0;
        double byKelvin = 0.0;
        double byConversion = 0.0;
        cure(temperatureUnit * y[i], y[count + i - m_fresh], rate, byKelvin, byConversion);
        out[count + i - m_fresh] = rate;
        out[i] += m_heat[i] / temperatureUnit * rate;
    }
    for (std::size_t i = 0; i < count; ++i)
        out[i] /= m_mass[i];
}

void System::jacobian(const double* y, double* out) const
{
    const std::size_t all = unknowns();
    const std::size_t count = nodes();
    std::fill_n(out, all * all, 0.0);
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = 0; j < count; ++j)
            out[i * all + j] = -m_stiffness[i][j] / m_mass[i];
    for (std::size_t i = m_fresh; i < count; ++i) {
        const std::size_t own = count + i - m_fresh;
        double rate = 0.0;
        double byKelvin = 0.0;
        double byConversion = 0.0;
        cure(temperatureUnit * y[i], y[own], rate, byKelvin, byConversion);
        out[own * all + i] = temperatureUnit * byKelvin;
        out[own * all + own] = byConversion;
        out[i * all + i] += m_heat[i] * byKelvin / m_mass[i];
        out[i * all + own] = m_heat[i] / temperatureUnit * byConversion / m_mass[i];
    }
}

} // namespace strandbench::test
