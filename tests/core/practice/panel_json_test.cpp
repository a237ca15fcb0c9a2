// SPDX-License-Identifier: GPL-3.0-or-later
// Panels are read strictly: what is not of the format, cannot be solved or claims a trap that is not laid is refused.
#include "shop.h"

#include "practice/panel_json.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

QJsonObject jsonOf(const PracticePanel& panel) { return QJsonDocument::fromJson(writePracticePanel(panel)).object(); }

Faults faultsOf(const QJsonObject& json)
{
    const Checked<PracticePanel> read = readPracticePanel(QJsonDocument(json).toJson());
    return read ? Faults{} : read.error();
}

QJsonObject with(QJsonObject json, const QString& part, const QString& key, const QJsonValue& value)
{
    QJsonObject inner = json.value(part).toObject();
    inner.insert(key, value);
    json.insert(part, inner);
    return json;
}

bool names(const Faults& faults, const QString& field, FaultKind kind)
{
    return std::ranges::any_of(faults, [&](const Fault& each) { return each.field == field && each.kind == kind; });
}

TEST(PracticePanelJson, IsReadAsItWasWritten)
{
    for (const PracticePanel& each : deliveredPanels()) {
        const Checked<PracticePanel> again = readPracticePanel(writePracticePanel(each));
        ASSERT_TRUE(again) << each.id.toStdString() << " " << again.error().front().field.toStdString();
        EXPECT_EQ(writePracticePanel(*again), writePracticePanel(each));
        EXPECT_EQ(again->traps, each.traps);
        EXPECT_EQ(again->shown.front, each.shown.front);
    }
}

TEST(PracticePanelJson, RefusesAKeyThatNobodyAskedFor)
{
    const QJsonObject json = jsonOf(delivered(u"old_patch"_s));
    EXPECT_TRUE(
        names(faultsOf(with(json, u"shown"_s, u"smell"_s, u"sweet"_s)), u"shown.smell"_s, FaultKind::UnknownKey));
    EXPECT_TRUE(names(faultsOf(with(json, u"truth"_s, u"job"_s, u"7"_s)), u"truth.job"_s, FaultKind::UnknownKey));
}

TEST(PracticePanelJson, NamesFieldValueAndWhatIsAllowed)
{
    const QJsonObject json = jsonOf(delivered(u"old_patch"_s));
    const Faults faults = faultsOf(with(json, u"shown"_s, u"magnet_here"_s, u"a_bit"_s));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front(), (Fault{u"shown.magnet_here"_s, u"a_bit"_s, FaultKind::NotOneOf, allCodes<MagnetPull>()}));
    EXPECT_TRUE(names(faultsOf(with(json, u"shown"_s, u"visible_length_mm"_s, 0)), u"shown.visible_length_mm"_s,
                      FaultKind::OutOfRange));
    EXPECT_TRUE(
        names(faultsOf(with(json, u"truth"_s, u"panel_c"_s, u"warm"_s)), u"truth.panel_c"_s, FaultKind::WrongKind));
}

/// Every key that a panel cannot do without is missed by name.
TEST(PracticePanelJson, MissesWhatMustBeThere)
{
    const QJsonObject json = jsonOf(delivered(u"old_patch"_s));
    for (const char* key :
         {"front", "film", "reach", "back", "inside", "magnet_here", "visible_length_mm", "foil", "near"}) {
        QJsonObject shown = json.value(u"shown"_s).toObject();
        shown.remove(QLatin1StringView(key));
        QJsonObject without = json;
        without.insert(u"shown"_s, shown);
        EXPECT_TRUE(names(faultsOf(without), u"shown."_s + QLatin1StringView(key), FaultKind::Missing)) << key;
    }
}

TEST(PracticePanelJson, RefusesAPanelThatWhatIsShownDoesNotSolve)
{
    const QJsonObject json = jsonOf(delivered(u"zinc_gone"_s));
    QJsonObject shown = json.value(u"shown"_s).toObject();
    shown.remove(u"zinc_beside_um"_s); // with the zinc ground away, steel would show the same
    QJsonObject blind = json;
    blind.insert(u"shown"_s, shown);
    const Faults faults = faultsOf(blind);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front(), (Fault{u"shown"_s, u"substrate"_s, FaultKind::Conflicts, {u"truth"_s, u"substrate"_s}}));
}

TEST(PracticePanelJson, RefusesATrapThatIsNotLaid)
{
    for (const PracticePanel& panel : deliveredPanels()) {
        for (const auto& [trap, code] : Codes<TrapKind>::table) {
            QJsonObject json = jsonOf(panel);
            json.insert(u"traps"_s, QJsonArray{QString::fromLatin1(code)});
            EXPECT_EQ(faultsOf(json).empty(), isLaid(trap, panel)) << code;
        }
    }
}

template <class E> void expectTold(const QString& text)
{
    for (const auto& entry : Codes<E>::table)
        EXPECT_TRUE(text.contains(QRegularExpression(uR"(\b%1\b)"_s.arg(QString::fromLatin1(entry.second)))))
            << entry.second;
}

/// Every key that the writer has and every code that the reader takes stands in the schema.
TEST(PracticePanelJson, TheSchemaTellsEveryKeyAndCode)
{
    QFile file(QStringLiteral(PRACTICE_PANELS) + u"/SCHEMA.md"_s);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    for (const PracticePanel& each : deliveredPanels())
        for (const QJsonObject json = jsonOf(each); const QString& part : {u"truth"_s, u"shown"_s})
            for (const QStringList keys = json.value(part).toObject().keys(); const QString& key : keys)
                EXPECT_TRUE(text.contains(key)) << key.toStdString();
    expectTold<Substrate>(text);
    expectTold<DamageKind>(text);
    expectTold<WeldKind>(text);
    expectTold<SurfaceState>(text);
    expectTold<Zone>(text);
    expectTold<Moisture>(text);
    expectTold<CoreMaterial>(text);
    expectTold<FrontMark>(text);
    expectTold<FilmLook>(text);
    expectTold<ClothRub>(text);
    expectTold<BackReach>(text);
    expectTold<BackMark>(text);
    expectTold<BackMarking>(text);
    expectTold<EdgeLook>(text);
    expectTold<InsideLook>(text);
    expectTold<MagnetPull>(text);
    expectTold<TapSound>(text);
    expectTold<SandedTo>(text);
    expectTold<AdhesiveFeel>(text);
    expectTold<FoilTest>(text);
    expectTold<Neighbour>(text);
    expectTold<TrapKind>(text);
}

/// Bytes knocked out, doubled or changed: refused with a reason, or whole and the same when written and read again.
TEST(PracticePanelJson, SurvivesDamagedFiles)
{
    std::mt19937_64 random{11};
    int taken = 0;
    for (int round = 0; round < 4000; ++round) {
        const std::vector<PracticePanel>& panels = deliveredPanels();
        QByteArray bytes = writePracticePanel(panels[random() % panels.size()]);
        for (std::uint64_t hits = 1 + random() % 3; hits > 0; --hits) {
            const auto at = static_cast<qsizetype>(random() % static_cast<std::uint64_t>(bytes.size()));
            if (random() % 2 == 0)
                bytes.remove(at, static_cast<qsizetype>(random() % 20));
            else
                bytes[at] = static_cast<char>(random() % 128);
        }
        const Checked<PracticePanel> read = readPracticePanel(bytes);
        if (!read) {
            EXPECT_FALSE(read.error().empty());
            continue;
        }
        ++taken;
        const QByteArray written = writePracticePanel(*read);
        const Checked<PracticePanel> again = readPracticePanel(written);
        ASSERT_TRUE(again) << written.toStdString();
        EXPECT_EQ(writePracticePanel(*again), written);
    }
    EXPECT_GT(taken, 0);
}

TEST(PracticePanelJson, AFolderIsReadWholeOrNot)
{
    const QTemporaryDir folder;
    EXPECT_EQ(readPracticePanels(folder.path()).error().front().kind, FaultKind::NotFound);
    const auto write = [&](const QString& name, const QByteArray& bytes) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    };
    write(u"a.json"_s, writePracticePanel(delivered(u"old_patch"_s)));
    EXPECT_EQ(readPracticePanels(folder.path())->size(), 1U);
    write(u"b.json"_s, writePracticePanel(delivered(u"old_patch"_s)));
    EXPECT_EQ(readPracticePanels(folder.path()).error().front().field, u"b.json: id"_s);
    write(u"b.json"_s, "{");
    EXPECT_TRUE(readPracticePanels(folder.path()).error().front().field.startsWith(u"b.json: "_s));
}

} // namespace
} // namespace strandbench::test
