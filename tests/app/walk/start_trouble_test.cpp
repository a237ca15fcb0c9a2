// SPDX-License-Identifier: GPL-3.0-or-later
// A log that cannot be opened: each reason has its own words on the glass.
#include "bench_fixture.h"

#include "shell/trouble_window.h"
#include "touch/fit_label.h"

#include <QFile>

#include <sqlite3.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class StartTrouble : public BenchTest {
protected:
    /// What the glass says when this log is opened.
    QString said(const QString& path)
    {
        ScriptedBench bench({path, workingMorning(), demoSettings(), {1280, 800}, 5.87, {}});
        if (!bench.trouble())
            return {};
        TroubleWindow window(*bench.trouble(), path, demoSettings(), 5.87);
        window.setFixedSize(1280, 800);
        window.show();
        QStringList texts;
        for (const FitLabel* each : window.findChildren<FitLabel*>()) {
            EXPECT_TRUE(each->textFits()) << each->text().toStdString();
            texts << each->text();
        }
        return texts.join(u' ');
    }
    void run(const char* sql)
    {
        sqlite3* connection = nullptr;
        ASSERT_EQ(sqlite3_open(QFile::encodeName(log()).constData(), &connection), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(connection, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(connection);
        sqlite3_close(connection);
    }
};

TEST_F(StartTrouble, EachReasonHasItsOwnWords)
{
    QFile text(folder() + u"/notes.txt"_s);
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write(QByteArray(4096, 'x'));
    text.close();
    const QString notADatabase = said(text.fileName());
    const QString noFolder = said(folder() + u"/not there/bench.sqlite"_s);
    open();
    walkTo(skirtPanel(), Station::Prepare);
    close();
    EXPECT_TRUE(said(log()).isEmpty()) << "a good log opens";
    run("UPDATE meta SET value = '99' WHERE key = 'min_compatible_version'; PRAGMA user_version = 99");
    const QString newer = said(log());
    QStringList all{notADatabase, noFolder, newer};
    for (const QString& each : all)
        EXPECT_FALSE(each.isEmpty());
    all.removeDuplicates();
    EXPECT_EQ(all.size(), 3);
    EXPECT_TRUE(text.open(QIODevice::ReadOnly));
    EXPECT_EQ(text.readAll(), QByteArray(4096, 'x')) << "what is not a log is never changed";
}

} // namespace
} // namespace strandbench::test
