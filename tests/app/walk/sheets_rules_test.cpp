// SPDX-License-Identifier: GPL-3.0-or-later
// The product sheets' screens, held to the rules of look and touch on every glass, in every language, in both units.
#include "every_look.h"

#include "exchange/sheet_draft.h"
#include "exchange/sheets.h"

#include <QFile>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class SheetRules : public LookTest {
protected:
    void walk(UnitSystem units)
    {
        Settings settings = demoSettings();
        settings.backupFolder = m_folder.path();
        m_bench = std::make_unique<ScriptedBench>(specOn(m_folder.filePath(u"bench.sqlite"_s), settings, units));
        ASSERT_TRUE(m_bench->door().set(u"271828"_s).empty());
        tap(u"set_up"_s);
        for (int i = 0; i < 4; ++i)
            tap(u"answer_way_on"_s);
        tapAndCheck(u"answer_way_on"_s);
        ASSERT_NO_FATAL_FAILURE(editor());
        ASSERT_NO_FATAL_FAILURE(files());
        ASSERT_NO_FATAL_FAILURE(page());
    }
    void settleAndCheck()
    {
        m_bench->thumb().settle();
        check();
    }
    void editor()
    {
        tapAndCheck(u"new_sheet"_s);
        tapAndCheck(u"kind_finish_smooth"_s); // the class with the most fields
        for (const QString& each : {u"field_name"_s, u"field_filler_class"_s, u"field_density_g_per_ml"_s}) {
            tap(each);
            settleAndCheck();
            if (each == u"field_density_g_per_ml"_s) {
                for (int i = 0; i < 9; ++i)
                    tap(u"key_9"_s);
                check(); // far too much
            }
            tap(u"answer_back"_s);
            m_bench->thumb().settle();
        }
        for (int i = 0; i < 6; ++i) {
            tap(u"answer_way_on"_s);
            settleAndCheck();
            if (i == 0) { // a temperature, and times that do not agree
                tap(u"field_reference_c"_s);
                settleAndCheck();
                tap(u"answer_back"_s);
                m_bench->thumb().settle();
            }
        }
        ASSERT_EQ(m_bench->window().screen()->objectName(), u"screen_set_up_product_edit"_s);
        for (int i = 0; i < 7; ++i) {
            tap(u"answer_back"_s);
            m_bench->thumb().settle();
        }
        tap(u"answer_back"_s);
        m_bench->thumb().settle();
    }
    void files()
    {
        SheetDraft draft = SheetDraft::of(*demoCatalogue().byClass(FillerClass::LongStrand));
        draft.set(u"demo"_s, false);
        draft.name(u"Long strand for the roof caps, from the red tub, hall 2"_s, {});
        put(u"long strand, hall 2.json"_s, draft.toJson());
        draft.set(u"density_g_per_ml"_s, 9);
        draft.set(u"working_min.early"_s, 6.5);
        put(u"odd.json"_s, draft.toJson());
        ASSERT_EQ(m_bench->window().screen()->objectName(), u"screen_set_up_sheets"_s);
        tapAndCheck(u"sheet_from_file"_s);
        ASSERT_NO_FATAL_FAILURE(pick(u"odd.json"_s));
        check();
        tap(u"answer_way_on"_s);
        tapAndCheck(u"answer_way_on"_s); // another folder
        tap(u"answer_back"_s);
        ASSERT_NO_FATAL_FAILURE(pick(u"long strand, hall 2.json"_s));
        check();
        tapAndCheck(u"answer_way_on"_s);
        for (const QChar each : u"271828"_s)
            tap(u"key_"_s + each);
        tap(u"answer_way_on"_s);
        settleAndCheck();
    }
    void page()
    {
        ASSERT_EQ(m_bench->window().screen()->objectName(), u"screen_set_up_product_page"_s);
        tapAndCheck(u"export_sheet"_s);
        tap(u"answer_way_on"_s);
        settleAndCheck();              // what was written
        tapAndCheck(u"answer_back"_s); // the list with one of the shop's own
        tapAndCheck(u"page_after"_s);
        tapAndCheck(u"sheet_demo_finish_fine"_s);
    }
    void put(const QString& name, const QByteArray& bytes) const
    {
        QFile file(m_folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    void pick(const QString& name)
    {
        for (int i = 0; i < 4; ++i) {
            const auto* row = qobject_cast<TapButton*>(m_bench->thumb().find(u"file_%1"_s.arg(i)));
            if (row && row->title() == name)
                return tap(u"file_%1"_s.arg(i));
        }
        FAIL() << name.toStdString() << " is not offered";
    }

    QTemporaryDir m_folder;
};

TEST_P(SheetRules, HoldInMetricUnits) { walk(UnitSystem::Metric); }

TEST_P(SheetRules, HoldInUsUnits) { walk(UnitSystem::UsCustomary); }

INSTANTIATE_TEST_SUITE_P(EveryLook, SheetRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
