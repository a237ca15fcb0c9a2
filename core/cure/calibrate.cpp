// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/calibrate.h"

#include "cure/solve.h"
#include "cure/test_piece.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// ln k2 and ln( k2 / k1 ): how fast, and how much the reaction feeds on itself.
struct Unknowns {
    double speed = 0;
    double bent = 0;
};

/// ln( model / sheet ) of both times; a time that is never reached is far too late.
struct Misses {
    double gel = 0;
    double sand = 0;
    [[nodiscard]] double size() const { return std::max(std::abs(gel), std::abs(sand)); }
};

constexpr double never = 5.0;
constexpr double settled = 1e-5;
constexpr int mostNewtonSteps = 12;
constexpr double longestNewtonStep = 1.5;
/// Where pairs are looked for: from hardly any to all but pure self-feeding. k1 and k2 up to 1 per second.
constexpr double leastBent = -7.0;
constexpr double mostBent = 10.0;
constexpr int bentSteps = 12;

class Pieces {
public:
    explicit Pieces(const ProductSheet& sheet) : m_sheet(sheet) {}

    [[nodiscard]] CureKinetics kinetics(const Unknowns& at) const
    {
        CureKinetics kinetics;
        kinetics.k2 = perSecond(std::exp(at.speed));
        kinetics.k1 = perSecond(std::exp(at.speed - at.bent));
        kinetics.law = m_sheet.cure;
        kinetics.reference = m_sheet.reference;
        kinetics.referenceHardener = m_sheet.hardenerNominal;
        return kinetics;
    }
    [[nodiscard]] double gelMiss(const Unknowns& at) const
    {
        return miss(gelTestPiece(m_sheet, kinetics(at)), &CureResult::gel, m_sheet.working.nominal);
    }
    [[nodiscard]] double sandMiss(const Unknowns& at) const
    {
        return miss(sandTestPiece(m_sheet, kinetics(at)), &CureResult::sand, m_sheet.sanding.nominal);
    }
    [[nodiscard]] Misses misses(const Unknowns& at) const { return {gelMiss(at), sandMiss(at)}; }
    [[nodiscard]] const ProductSheet& sheet() const { return m_sheet; }

private:
    static double miss(const CureCase& piece, std::optional<Duration> CureResult::*mark, Duration stated)
    {
        CureFineness fine;
        fine.tolerance = 2e-5;
        fine.until = CureUntil::Marks;
        const CureOutcome result = solveCure(piece, fine);
        if (!result || !((*result).*mark))
            return never;
        return std::clamp(std::log(*((*result).*mark) / stated), -never, never);
    }

    const ProductSheet& m_sheet;
};

/// Damped Newton from a pair that suits the demo sheets. Empty where it does not settle.
std::optional<Unknowns> newton(const Pieces& pieces)
{
    Unknowns at{std::log(2.5 / inSeconds(pieces.sheet().working.nominal)), std::log(60.0)};
    Misses here = pieces.misses(at);
    constexpr double h = 0.01;
    for (int step = 0; step < mostNewtonSteps && here.size() > settled; ++step) {
        const Misses faster = pieces.misses({at.speed + h, at.bent});
        const Misses bent = pieces.misses({at.speed, at.bent + h});
        const double a = (faster.gel - here.gel) / h;
        const double b = (bent.gel - here.gel) / h;
        const double c = (faster.sand - here.sand) / h;
        const double d = (bent.sand - here.sand) / h;
        const double determinant = a * d - b * c;
        if (std::abs(determinant) < 1e-9)
            return std::nullopt;
        double bySpeed = (b * here.sand - d * here.gel) / determinant;
        double byBent = (c * here.gel - a * here.sand) / determinant;
        const double shorten = std::min(1.0, longestNewtonStep / std::max(std::abs(bySpeed), std::abs(byBent)));
        bySpeed *= shorten;
        byBent *= shorten;
        double share = 1.0;
        Unknowns next;
        Misses there;
        do {
            next = {at.speed + share * bySpeed, at.bent + share * byBent};
            there = pieces.misses(next);
            share /= 2.0;
        } while (there.size() >= here.size() && share > 0.05);
        if (there.size() >= here.size())
            return std::nullopt;
        at = next;
        here = there;
    }
    if (here.size() > settled || at.speed > 0.0 || at.speed - at.bent > 0.0 || at.bent > mostBent)
        return std::nullopt;
    return at;
}

/// The speed that gives the sheet's working time at this bend; empty when none up to 1 per second does.
std::optional<double> speedFor(const Pieces& pieces, double bent)
{
    double low = std::log(1e-9);
    double high = std::min(0.0, bent);
    const auto late = [&](double speed) { return pieces.gelMiss({speed, bent}); };
    const double atLow = late(low);
    const double atHigh = late(high);
    if (atLow <= 0.0 || atHigh >= 0.0)
        return std::nullopt;
    std::uintmax_t most = 60;
    const auto [below, above] = boost::math::tools::toms748_solve(late, low, high, atLow, atHigh,
                                                                  boost::math::tools::eps_tolerance<double>(24), most);
    return (below + above) / 2.0;
}

/// What a bend makes of the sanding time once the working time is met.
struct Trial {
    Unknowns at;
    double sand = 0; ///< ln( model / sheet )
};

std::optional<Trial> trial(const Pieces& pieces, double bent)
{
    const std::optional<double> speed = speedFor(pieces, bent);
    if (!speed)
        return std::nullopt;
    const Unknowns at{*speed, bent};
    return Trial{at, pieces.sandMiss(at)};
}

QString inMinutesRounded(double value, double (*round)(double))
{
    return QString::number(round(value * 10.0) / 10.0, 'f', 1);
}

/// No pair fits: names the sanding times that would, rounded inwards to 0.1 min.
Faults refusal(const ProductSheet& sheet, const std::vector<Trial>& trials)
{
    const QString field = u"sanding_min.nominal"_s;
    const QString value = QString::number(inMinutes(sheet.sanding.nominal), 'g', 12);
    std::vector<double> reached;
    for (const Trial& each : trials)
        if (each.sand < never)
            reached.push_back(inMinutes(sheet.sanding.nominal) * std::exp(each.sand));
    if (reached.empty())
        return {{field,
                 value,
                 FaultKind::Conflicts,
                 {u"cure.max_conversion_at_reference"_s, QString::number(sheet.cure.maxConversionAtReference)}}};
    const auto [least, most] = std::minmax_element(reached.begin(), reached.end());
    return {{field,
             value,
             FaultKind::OutOfRange,
             {inMinutesRounded(*least, std::ceil), inMinutesRounded(*most, std::floor), u"min"_s}}};
}

/// Scans the bends, then closes in where the sanding time passes the sheet's.
Checked<CureKinetics> bracket(const Pieces& pieces)
{
    std::vector<Trial> trials;
    for (int step = 0; step <= bentSteps; ++step) {
        const double bent = leastBent + (mostBent - leastBent) * step / bentSteps;
        const std::optional<Trial> next = trial(pieces, bent);
        if (!next)
            continue;
        trials.push_back(*next);
        if (trials.size() < 2 || (trials.rbegin()[1].sand > 0.0) == (next->sand > 0.0))
            continue;
        Trial below = trials.rbegin()[1];
        Trial above = *next;
        while (above.at.bent - below.at.bent > 1e-7) {
            const std::optional<Trial> middle = trial(pieces, (below.at.bent + above.at.bent) / 2.0);
            if (!middle)
                break;
            ((middle->sand > 0.0) == (below.sand > 0.0) ? below : above) = *middle;
        }
        return pieces.kinetics(below.at);
    }
    return tl::unexpected(refusal(pieces.sheet(), trials));
}

} // namespace

Checked<CureKinetics> calibrate(const ProductSheet& sheet)
{
    const Pieces pieces(sheet);
    if (const std::optional<Unknowns> found = newton(pieces))
        return pieces.kinetics(*found);
    return bracket(pieces);
}

} // namespace strandbench
