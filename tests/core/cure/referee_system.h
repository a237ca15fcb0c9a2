// SPDX-License-Identifier: GPL-3.0-or-later
// The equations of a cure case on spectral elements, and their exact Jacobian.
#pragma once

#include "cure/cure_case.h"
#include "spectral_elements.h"

#include <algorithm>
#include <vector>

namespace strandbench::test {

/// A piece of the stack or of the fresh layer.
struct Element {
    double width = 0.0; ///< m
    ThermalMaterial material;
    double temperature = 0.0; ///< K at the start
};

inline constexpr double temperatureUnit = 100.0;

/// M dT/dt = -K T + faces + heat of reaction, and dalpha/dt at each fresh node.
/// Unknowns: temperatures of all nodes in hundreds of kelvins, so that one tolerance fits all, then the conversions
/// of the fresh ones.
class System {
public:
    System(const CureCase& cureCase, int freshElements);

    [[nodiscard]] std::size_t nodes() const { return m_mass.size(); }
    [[nodiscard]] std::size_t freshNodes() const { return nodes() - m_fresh; }
    [[nodiscard]] std::size_t unknowns() const { return nodes() + freshNodes(); }
    [[nodiscard]] std::vector<double> start() const; /// By the second. `out` has one place an unknown.
    void rates(const double* y, double* out) const;
    /// `out` has a row an unknown.
    void jacobian(const double* y, double* out) const;
    /// Until the step between layers of unlike temperatures has spread over the element at the contact; 0 without.
    [[nodiscard]] double secondsOfContact() const { return m_secondsOfContact; }
    // In the fresh layer, between the nodes as well.
    [[nodiscard]] double hottest(const double* y) const { return temperatureUnit * highest(y + m_fresh); }
    [[nodiscard]] double hottestNode(const double* y) const
    {
        return temperatureUnit * *std::max_element(y + m_fresh, y + nodes());
    }
    [[nodiscard]] double mostCured(const double* y) const { return highest(y + nodes()); }
    [[nodiscard]] double faceCured(const double* y) const { return y[unknowns() - 1]; }

private:
    void assemble(const std::vector<Element>& elements);
    [[nodiscard]] double highest(const double* nodal) const;
    /// dalpha/dt and its derivatives by temperature (a kelvin) and by conversion.
    void cure(double kelvin, double conversion, double& rate, double& byKelvin, double& byConversion) const;

    const CureCase& m_case;
    Lobatto m_lobatto;
    std::size_t m_freshElements;
    std::size_t m_fresh = 0; ///< the first node of the fresh layer
    std::vector<double> m_mass;
    std::vector<std::vector<double>> m_stiffness; ///< rows of nodes() each
    std::vector<double> m_heat;                   ///< J/m2 a node
    std::vector<double> m_start;
    std::vector<std::vector<double>> m_between;
    double m_phi = 1.0;
    double m_secondsOfContact = 0.0;
};

} // namespace strandbench::test
