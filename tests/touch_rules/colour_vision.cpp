// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/colour_vision.h"

#include "touch_rules/contrast.h"

#include <QHash>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strandbench::rules {
namespace {

// G. M. Machado, M. M. Oliveira, L. A. F. Fernandes: A physiologically-based model for simulation of color vision
// deficiency. IEEE Transactions on Visualization and Computer Graphics 15 (6), 2009, 1291-1298: the matrices of
// severity 1.0, for linear RGB. Each row adds up to 1, so that grey stays grey.
constexpr ColourMatrix full{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
constexpr ColourMatrix protanopia{
    {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr ColourMatrix deuteranopia{
    {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr ColourMatrix tritanopia{
    {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};
// WCAG 2.x, relative luminance, in each channel.
constexpr ColourMatrix grey{{{0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}}};

// IEC 61966-2-1, both ways.
double linear(int channel)
{
    const double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

int coded(double linear)
{
    const double share = std::clamp(linear, 0.0, 1.0);
    return qRound(255 * (share <= 0.0031308 ? share * 12.92 : 1.055 * std::pow(share, 1 / 2.4) - 0.055));
}

} // namespace

const char* nameOf(Vision vision)
{
    switch (vision) {
    case Vision::Full:
        return "full colour vision";
    case Vision::Protanopia:
        return "protanopia";
    case Vision::Deuteranopia:
        return "deuteranopia";
    case Vision::Tritanopia:
        return "tritanopia";
    case Vision::Grey:
        return "no colour";
    }
    throw std::invalid_argument("nameOf: no such vision");
}

const ColourMatrix& matrixOf(Vision vision)
{
    switch (vision) {
    case Vision::Full:
        return full;
    case Vision::Protanopia:
        return protanopia;
    case Vision::Deuteranopia:
        return deuteranopia;
    case Vision::Tritanopia:
        return tritanopia;
    case Vision::Grey:
        return grey;
    }
    throw std::invalid_argument("matrixOf: no such vision");
}

QColor seen(const QColor& color, Vision vision)
{
    const std::array<double, 3> light{linear(color.red()), linear(color.green()), linear(color.blue())};
    std::array<int, 3> out{};
    const ColourMatrix& matrix = matrixOf(vision);
    for (std::size_t row = 0; row < out.size(); ++row)
        out.at(row) = coded(matrix.at(row)[0] * light[0] + matrix.at(row)[1] * light[1] + matrix.at(row)[2] * light[2]);
    return {out[0], out[1], out[2], color.alpha()};
}

double differenceMm2(const QImage& one, const QImage& other, Vision vision, double pixelsPerMillimetre,
                     double leastRatio)
{
    if (one.size() != other.size())
        throw std::invalid_argument("differenceMm2: pictures of one size are compared");
    QHash<QRgb, QColor> known;
    const auto asSeen = [&known, vision](QRgb pixel) {
        auto found = known.find(pixel);
        if (found == known.end())
            found = known.insert(pixel, seen(QColor(pixel), vision));
        return *found;
    };
    int pixels = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const QRgb a = one.pixel(x, y);
            const QRgb b = other.pixel(x, y);
            if (a != b && contrastRatio(asSeen(a), asSeen(b)) >= leastRatio)
                ++pixels;
        }
    return pixels / (pixelsPerMillimetre * pixelsPerMillimetre);
}

} // namespace strandbench::rules
