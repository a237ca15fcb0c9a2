// SPDX-License-Identifier: GPL-3.0-or-later
// Spectral elements on Gauss-Lobatto-Legendre points (Canuto, Hussaini, Quarteroni and Zang, Spectral Methods:
// Fundamentals in Single Domains, 2.3; numbers as in the textbooks, from memory, and checked in referee_test.cpp).
// Unlike the engine's finite volumes in every respect but the equations.
#pragma once

#include <vector>

namespace strandbench::test {

/// Of one element, on -1 to 1.
struct Lobatto {
    explicit Lobatto(int degree);

    /// What a nodal profile is at a place, by Lagrange's polynomials: one weight a node.
    [[nodiscard]] std::vector<double> weightsAt(double place) const;

    std::vector<double> points;
    std::vector<double> weights;
    std::vector<std::vector<double>> slope; ///< row by point: the derivative there, of each node's polynomial
};

} // namespace strandbench::test
