// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/find_screens.h"

#include "report/recall_list.h"
#include "report/write_new.h"
#include "screens/job/in_hand.h"
#include "screens/frame/scan_text.h"
#include "theme/sizes.h"
#include "words/event_words.h"
#include "words/stock_words.h"

#include <QFile>
#include <QFileInfo>
#include <QPointer>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int foundAtOnce = 30;
constexpr int mostUses = 10'000; ///< of a lot: more batches than a tub could ever make
constexpr int longestText = 40;
constexpr TextSize rowTitle{4.6, 3.4};

/// Both files or neither; an error is the system's words.
tl::expected<void, QString> writeBoth(const QString& stem, const QByteArray& csv, const QByteArray& pdf)
{
    const QString first = stem + u".csv"_s;
    if (const auto written = writeNew(first, csv); !written)
        return written;
    const auto written = writeNew(stem + u".pdf"_s, pdf);
    if (!written)
        QFile::remove(first);
    return written;
}

} // namespace

FindScreen::FindScreen(const Surroundings& around, const QString& text, QWidget* parent)
    : Screen(around, u"screen_find"_s, parent)
{
    buildFrame(tr("Job, panel, person, lot or words of a note"), tr("What is looked for?"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Look for it"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    m_typed = label(u"find_typed"_s, TextRole::Title);
    m_keys = new LetterKeys(theme(), around.upright ? 4 : 8, this);
    m_keys->setLongest(longestText);
    column->addWidget(m_typed, 1);
    column->addWidget(m_keys, around.upright ? 4 : 3);
    content()->addLayout(column, 1);
    const auto shown = [this] {
        showTrouble({}, {});
        m_typed->setText(m_keys->text().isEmpty() ? u"–"_s : m_keys->text());
        answers()->setWayOnEnabled(!m_keys->text().trimmed().isEmpty());
    };
    connect(m_keys, &LetterKeys::textChanged, this, shown);
    connect(m_keys, &LetterKeys::entered, this, [this] { give(m_keys->text()); });
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { give(m_keys->text()); });
    m_keys->setText(text);
    shown();
    m_keys->setFocus();
}

void FindScreen::give(const QString& text)
{
    if (!text.trimmed().isEmpty())
        Q_EMIT wanted(text.trimmed());
}

bool FindScreen::scanned(const QString& text)
{
    if (!isShowable(text))
        showTrouble(tr("The code holds a control character."), tr("It is not looked for."));
    else
        give(text.left(longestText));
    return true;
}

FoundScreen::FoundScreen(const Surroundings& around, const QString& text, QWidget* parent)
    : Screen(around, u"screen_found"_s, parent), m_text(text)
{
    buildFrame(tr("Looked for: %1").arg(inhand::shownLot(text)), tr("Looking …"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Look for something else"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    m_rows = new PagedRows(around, sizes::target, this);
    m_told = label(u"found_none"_s, TextRole::Body);
    m_told->hide();
    content()->addWidget(m_rows, 1);
    content()->addWidget(m_told, 1);
    ask(0);
}

void FoundScreen::ask(qint64 before)
{
    around().bench.recorder().find(m_text, foundAtOnce, before,
                                   [screen = QPointer<FoundScreen>(this)](const Logged<FoundBook>& book) {
                                       if (screen)
                                           screen->show(book);
                                   });
}

void FoundScreen::show(const Logged<FoundBook>& book)
{
    if (!book)
        return showTrouble(book.error());
    std::vector<PagedRows::MakeRow> rows;
    for (const StockLot& each : book->lots)
        rows.push_back(lotRow(each, rows.size()));
    for (std::size_t i = 0; i < book->repairs.size(); ++i)
        rows.push_back(repairRow(book->repairs[i], i));
    if (book->more)
        rows.push_back(olderRow(book->repairs.back().place));
    setSentence(rows.empty() ? tr("Nothing found") : tr("The newest first: tap one"));
    m_told->setText(tr("No repair holds all of these words. Fewer letters find more: words are found by their "
                       "beginning."));
    m_told->setVisible(rows.empty());
    m_rows->setVisible(!rows.empty());
    m_rows->setRows(std::move(rows));
}

PagedRows::MakeRow FoundScreen::lotRow(const StockLot& lot, std::size_t index)
{
    return [this, lot, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"found_lot_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(stockLotName({lot.product, inhand::shownLot(lot.lot)}, around().bench.planning().catalogue));
        row->setSecondLine(tr("every repair that took of this lot"));
        row->setTitleSize(rowTitle);
        connect(row, &TapButton::clicked, this, [this, lot] { Q_EMIT lotTapped(lot); });
        return row;
    };
}

PagedRows::MakeRow FoundScreen::repairRow(const FoundRepair& found, std::size_t index)
{
    QStringList second{stockDay(QDateTime::fromMSecsSinceEpoch(found.takenInUtcMs).date(), words())};
    second << found.people.mid(0, 2) << found.lots.mid(0, 3);
    return [this, found, second, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"found_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(found.job + u" · "_s + found.panel);
        row->setSecondLine(second.join(u" · "_s));
        row->setTitleSize(rowTitle);
        connect(row, &TapButton::clicked, this, [this, id = found.repair] { Q_EMIT repairTapped(id); });
        return row;
    };
}

PagedRows::MakeRow FoundScreen::olderRow(qint64 before)
{
    return [this, before](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"found_older"_s, TapButton::Kind::Quiet, parent);
        row->setTitle(tr("Older ones"));
        connect(row, &TapButton::clicked, this, [this, before] { ask(before); });
        return row;
    };
}

LotTraceScreen::LotTraceScreen(const Surroundings& around, const StockLot& lot, QWidget* parent)
    : Screen(around, u"screen_lot_trace"_s, parent), m_lot(lot), m_worker(around.bench.computing())
{
    buildFrame(stockLotName({lot.product, inhand::shownLot(lot.lot)}, around.bench.planning().catalogue),
               tr("Looking …"));
    answers()->stop()->hide();
    offerWayOn();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        if (m_writing)
            m_worker.stop();
        else
            Q_EMIT recallWanted();
    });
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    m_rows = new PagedRows(around, sizes::target, this);
    m_told = label(u"trace_told"_s, TextRole::Small);
    m_told->hide();
    column->addWidget(m_rows, 1);
    column->addWidget(m_told);
    content()->addLayout(column, 1);
    around.bench.recorder().readUses(
        lot, mostUses, 0, [screen = QPointer<LotTraceScreen>(this)](const Logged<std::vector<LotUse>>& uses) {
            if (screen)
                screen->show(uses);
        });
}

void LotTraceScreen::show(const Logged<std::vector<LotUse>>& uses)
{
    if (!uses)
        return showTrouble(uses.error());
    Q_EMIT usesRead(*uses);
    std::set<QUuid> repairs;
    std::vector<PagedRows::MakeRow> rows;
    for (const LotUse& each : *uses) {
        repairs.insert(each.repair);
        rows.push_back(rowOf(each, rows.size()));
    }
    const QString batches = words().batches(static_cast<int>(uses->size()));
    //: %1 is "3 batches"
    setSentence(rows.empty() ? tr("Nothing was mixed of this lot")
                             : tr("%1 in %n repair(s)", nullptr, static_cast<int>(repairs.size())).arg(batches));
    m_anyUse = !rows.empty();
    offerWayOn();
    m_rows->setRows(std::move(rows));
}

void LotTraceScreen::tell(const QString& text)
{
    m_told->setText(text);
    m_told->setVisible(!text.isEmpty());
}

void LotTraceScreen::offerWayOn()
{
    answers()->setWayOn(m_writing ? tr("Cancel") : tr("Recall list as files"));
    answers()->setWayOnEnabled(m_writing || m_anyUse);
}

void LotTraceScreen::writeRecall(const QString& stem, const std::vector<LotUse>& uses)
{
    m_writing = true;
    offerWayOn();
    tell(tr("The recall list is being written …"));
    const QString product = stockProductName(m_lot.product, around().bench.planning().catalogue);
    const Paper paper = words().units() == UnitSystem::UsCustomary ? Paper::Letter : Paper::A4;
    m_worker.ask(
        [this, stem, uses, product, paper, lot = m_lot, said = words()](const std::stop_token& stop) -> Worker::Show {
            const QByteArray pdf = recallPdf(lot, product, uses, paper, said, stop);
            QString told = tr("Cancelled: nothing was written.");
            if (!pdf.isEmpty()) {
                const auto written = writeBoth(stem, recallCsv(uses), pdf);
                //: %1 is a file’s name without its ending
                told = written ? tr("Written as CSV and PDF: %1").arg(QFileInfo(stem).fileName())
                               : tr("Not written: %1").arg(written.error());
            }
            return [this, told] {
                m_writing = false;
                offerWayOn();
                tell(told);
            };
        });
}

PagedRows::MakeRow LotTraceScreen::rowOf(const LotUse& use, std::size_t index)
{
    return [this, use, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"trace_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(use.job + u" · "_s + use.panel);
        row->setSecondLine(QStringList{stockDay(QDate::fromString(use.localDay, Qt::ISODate), words()),
                                       batchName({use.finishing, use.batch}), stockMass(use.amount, words()),
                                       personText(use.person)}
                               .join(u" · "_s));
        row->setTitleSize(rowTitle);
        connect(row, &TapButton::clicked, this, [this, id = use.repair] { Q_EMIT repairTapped(id); });
        return row;
    };
}

} // namespace strandbench
