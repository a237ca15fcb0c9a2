// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound_panels.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {

Damage smallDamage(DamageKind kind)
{
    Damage damage;
    damage.kind = kind;
    damage.length = millimetres(10);
    damage.width = millimetres(8);
    damage.depth = millimetres(2);
    damage.panelThickness = millimetres(3);
    if (kind == DamageKind::Hole || kind == DamageKind::RustHole)
        damage.depth = damage.panelThickness;
    if (kind == DamageKind::Hole || kind == DamageKind::Crack)
        damage.bevelRatio = 4;
    if (kind == DamageKind::WeldSeam)
        damage.weld = WeldKind::Solid;
    if (kind == DamageKind::BondSeam)
        damage.adhesiveCured = true;
    return damage;
}

Assessment soundPanel(Substrate substrate, DamageKind kind)
{
    Assessment assessment;
    assessment.job = u"4421"_s;
    assessment.panel = u"skirt panel"_s;
    assessment.substrate = substrate;
    assessment.damage = smallDamage(kind);
    if (kind == DamageKind::Hole)
        assessment.rearAccess = true;
    assessment.surface = SurfaceState::Bare;
    assessment.zone = Zone::Cosmetic;
    assessment.moisture = Moisture::Dry;
    assessment.reading = Reading{celsius(22), celsius(22), Fraction::ofHundred(50)};
    return assessment;
}

Decision decideHere(const Assessment& assessment) { return decide(assessment, builtInTable(), demoCatalogue()); }

Catalogue only(const std::vector<FillerClass>& classes)
{
    std::vector<ProductSheet> sheets;
    for (const FillerClass each : classes)
        sheets.push_back(demoSheet(each));
    return Catalogue(std::move(sheets));
}

ProductSheet demoSheet(FillerClass filler)
{
    const ProductSheet* sheet = demoCatalogue().byClass(filler);
    if (sheet == nullptr)
        throw std::logic_error("no demo sheet of " + codeOf(filler).toStdString());
    return *sheet;
}

QStringList stopCodes(const Decision& decision)
{
    QStringList codes;
    for (const Stop& each : decision.stops)
        codes << each.reason.code;
    codes.sort();
    return codes;
}

QStringList unanswered(const Decision& decision)
{
    QStringList questions;
    for (const Stop& each : decision.stops)
        if (each.reason.code == u"not_assessed"_s)
            questions << std::get<QString>(each.reason.arguments.at(0));
    questions.sort();
    return questions;
}

Stop stopNamed(const Decision& decision, const QString& code)
{
    for (const Stop& each : decision.stops)
        if (each.reason.code == code)
            return each;
    ADD_FAILURE() << "no stop " << code.toStdString();
    return {};
}

QString whyNot(const Decision& decision, FillerClass filler)
{
    for (const RejectedFiller& each : decision.rejected)
        if (each.filler == filler)
            return each.reason.code;
    return {};
}

} // namespace strandbench::test
