// SPDX-License-Identifier: GPL-3.0-or-later
// The job sheet on a printer, answered for in the place of the system's dialog; and made beside the glass, cancelled.
#include "bench_fixture.h"
#include "report/pdf_reader.h"

#include "screens/paper/sheet_screen.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QPrinter>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

void waitUntil(const std::function<bool()>& there)
{
    const QDeadlineTimer deadline(60'000);
    while (!there() && !deadline.hasExpired())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    ASSERT_TRUE(there());
}

/// The screen by itself, on a bench that has handed a job over.
class SheetOnScreen : public BenchTest {
protected:
    void SetUp() override { qputenv("HOME", QFile::encodeName(folder())); } // the documents of this test
    void TearDown() override
    {
        m_screen.reset();
        m_bench.reset();
        qputenv("HOME", m_home);
    }

    void open(const Printing& printing, Worker::Runs runs = Worker::Runs::Inline)
    {
        m_bench = std::make_unique<ScriptedBench>(
            ScriptedBench::Spec{log(), workingMorning(), m_settings, {1280, 800}, 5.87, std::nullopt, runs});
        Walk walk(*m_bench, skirtPanel());
        ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
        m_screen = std::make_unique<SheetScreen>(Surroundings{m_theme, m_words, m_bench->bench(), m_settings, false},
                                                 m_bench->repair(u"4421"_s)->id, nullptr, printing);
        waitUntil([this] { return key(u"sheet_print"_s)->isEnabled(); });
    }
    [[nodiscard]] TapButton* key(const QString& name) const { return m_screen->findChild<TapButton*>(name); }
    [[nodiscard]] QString told() const { return m_screen->findChild<FitLabel*>(u"sheet_told"_s)->text(); }
    /// What lies in the documents.
    [[nodiscard]] static QStringList written()
    {
        return QDir(sheetFolders().front().path).entryList({u"*.pdf"_s}, QDir::Files, QDir::Name);
    }
    /// Answers in the place of the dialog: into a file, or not at all.
    [[nodiscard]] Printing answering(bool print, int& asked)
    {
        return {[] { return QStringList{u"Shop floor"_s}; },
                [this, print, &asked](const std::shared_ptr<QPrinter>& printer, QWidget*,
                                      const std::function<void(bool)>& answered) {
                    ++asked;
                    printer->setOutputFormat(QPrinter::PdfFormat);
                    printer->setOutputFileName(printedPath());
                    answered(print);
                }};
    }
    [[nodiscard]] QString printedPath() const { return QDir(folder()).filePath(u"printed.pdf"_s); }
    static QByteArray bytesOf(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    const Settings m_settings = demoSettings();
    const Theme m_theme{Metrics(5.87), DayNight::Day, Hand::Right};
    const Words m_words{UnitSystem::Metric, QLocale(u"en"_s)};
    std::unique_ptr<ScriptedBench> m_bench;
    std::unique_ptr<SheetScreen> m_screen;

private:
    QByteArray m_home = qgetenv("HOME");
};

TEST_F(SheetOnScreen, PrintsThePagesThatThePdfHas)
{
    int asked = 0;
    open(answering(true, asked));
    for (const QString& paper : {u"paper_letter"_s, u"paper_a4"_s}) {
        key(paper)->click();
        key(u"sheet_print"_s)->click();
        EXPECT_TRUE(told().startsWith(u"Given to the printer"_s)) << told().toStdString();
        EXPECT_EQ(m_screen->troubleShown(), QString());
        key(u"sheet_folder_0"_s)->click();
        const QString path = told().mid(told().indexOf(u": "_s) + 2);
        const PdfReader pdf(bytesOf(path));
        const PdfReader printed(bytesOf(printedPath()));
        EXPECT_EQ(printed.pages(), pdf.pages());
        EXPECT_NEAR(printed.pageSizePoints().width(), pdf.pageSizePoints().width(), 1);
    }
    EXPECT_EQ(asked, 2);
}

TEST_F(SheetOnScreen, PrintsNothingWhenTheDialogIsLeft)
{
    int asked = 0;
    open(answering(false, asked));
    key(u"sheet_print"_s)->click();
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(told(), QString());
    EXPECT_FALSE(QFile::exists(printedPath()));
    EXPECT_TRUE(key(u"sheet_print"_s)->isEnabled());
}

TEST_F(SheetOnScreen, SaysThatThereIsNoPrinter)
{
    bool asked = false;
    open({[] { return QStringList(); }, [&asked](const auto&, QWidget*, const auto&) { asked = true; }});
    key(u"sheet_print"_s)->click();
    EXPECT_FALSE(asked);
    EXPECT_TRUE(m_screen->troubleShown().contains(u"No printer"_s)) << m_screen->troubleShown().toStdString();
    key(u"sheet_folder_0"_s)->click();
    EXPECT_EQ(m_screen->troubleShown(), QString());
    EXPECT_EQ(written().size(), 1);
}

TEST_F(SheetOnScreen, SaysThatThePrinterTookNothing)
{
    open({[] { return QStringList{u"Shop floor"_s}; },
          [this](const std::shared_ptr<QPrinter>& printer, QWidget*, const std::function<void(bool)>& answered) {
              printer->setOutputFormat(QPrinter::PdfFormat);
              printer->setOutputFileName(QDir(folder()).filePath(u"no/such/folder/printed.pdf"_s));
              answered(true);
          }});
    key(u"sheet_print"_s)->click();
    EXPECT_TRUE(m_screen->troubleShown().contains(u"does not take"_s)) << m_screen->troubleShown().toStdString();
    EXPECT_EQ(told(), QString());
}

/// The tap answers at once; what is made meanwhile is whole, and told where it is.
TEST_F(SheetOnScreen, IsMadeBesideTheGlass)
{
    int asked = 0;
    open(answering(true, asked), Worker::Runs::InThread);
    const QString path = key(u"sheet_folder_0"_s)->secondLine();
    key(u"sheet_folder_0"_s)->click();
    EXPECT_EQ(told(), QString()) << "nothing is told before it is there";
    EXPECT_NE(key(u"sheet_folder_0"_s)->secondLine(), path) << "the key shows that it works";
    for (const QString& each : {u"sheet_folder_0"_s, u"sheet_print"_s, u"paper_a4"_s, u"paper_letter"_s})
        EXPECT_FALSE(key(each)->isEnabled()) << each.toStdString();
    EXPECT_TRUE(key(u"answer_way_on"_s)->isEnabled()) << "to cancel";
    waitUntil([this] { return !told().isEmpty(); });
    EXPECT_EQ(written().size(), 1);
    EXPECT_TRUE(told().contains(written().front())) << told().toStdString();
    EXPECT_EQ(key(u"sheet_folder_0"_s)->secondLine(), path);
    EXPECT_TRUE(key(u"sheet_print"_s)->isEnabled());
    EXPECT_FALSE(key(u"answer_way_on"_s)->isEnabled());
}

/// Cancelled at whatever moment: what is told is what lies there.
TEST_F(SheetOnScreen, CancelledItSaysWhatIsTrue)
{
    int asked = 0;
    open(answering(true, asked), Worker::Runs::InThread);
    for (int i = 0; i < 12; ++i) {
        const QStringList before = written();
        key(u"sheet_folder_0"_s)->click();
        for (int wait = 0; wait < i; ++wait)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 15);
        if (key(u"answer_way_on"_s)->isEnabled())
            key(u"answer_way_on"_s)->click();
        waitUntil([this] { return !told().isEmpty(); });
        const bool more = written().size() > before.size();
        EXPECT_EQ(told().startsWith(u"Written"_s), more) << told().toStdString();
        EXPECT_EQ(told().startsWith(u"Cancelled"_s), !more) << told().toStdString();
    }
}

/// Left while it is made: the screen goes at once, and nothing of it is half written.
TEST_F(SheetOnScreen, LeftMeanwhileItLeavesNothingHalf)
{
    int asked = 0;
    open(answering(true, asked), Worker::Runs::InThread);
    key(u"sheet_folder_0"_s)->click();
    m_screen.reset();
    const QStringList files = written();
    for (const QString& each : files)
        EXPECT_FALSE(PdfReader(bytesOf(QDir(sheetFolders().front().path).filePath(each))).pages().isEmpty());
}

} // namespace
} // namespace strandbench::test
