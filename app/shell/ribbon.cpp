// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/ribbon.h"

#include "air/gate.h"
#include "screens/job/hands_words.h"
#include "screens/frame/phrases.h"
#include "screens/frame/sign_widget.h"
#include "theme/sizes.h"

#include <QPainter>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double blockWidth = 60;
constexpr double restWidth = 20;
constexpr double helpWidth = 20;
constexpr double narrowReading = 41.6; // an upright glass still has room for a narrow block and the rest beside it
constexpr double wideReading = 58;     // more than its words need
constexpr double silentWidth = 20;

} // namespace

Ribbon::Ribbon(const Theme& theme, const Words& words, const Bench& bench, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_words(words), m_bench(bench), m_row(new QHBoxLayout(this))
{
    setObjectName(u"ribbon"_s);
    const int margin = theme.px(1.2);
    m_row->setContentsMargins(theme.px(sizes::margin), margin, theme.px(sizes::margin), margin);
    m_row->setSpacing(theme.px(sizes::gap));
    m_rest = new TapButton(theme, u"ribbon_rest"_s, TapButton::Kind::Quiet, this);
    m_rest->setFixedWidth(theme.px(restWidth));
    m_rest->hide();
    connect(m_rest, &TapButton::clicked, this, &Ribbon::restTapped);
    m_reading = new ReadingButton(theme, this);
    m_reading->setFixedSize(theme.px(narrowReading), theme.px(sizes::ribbon));
    connect(m_reading, &ReadingButton::clicked, this, &Ribbon::airTapped);
    m_silent = makeSilent();
    m_help = new TapButton(theme, u"help"_s, TapButton::Kind::Quiet, this);
    m_help->setSign(Pictogram::Question);
    m_help->setAccessibleName(tr("Help"));
    m_help->setFixedSize(theme.px(helpWidth), theme.px(sizes::ribbon));
    connect(m_help, &TapButton::clicked, this, &Ribbon::helpTapped);
    m_row->addStretch(1);
    m_row->addWidget(m_rest);
    m_row->addWidget(m_silent);
    m_row->addWidget(m_reading);
    m_row->addWidget(m_help); // always the last: a thumb finds it without looking
    setFixedHeight(theme.px(sizes::ribbon) + 2 * margin);
}

QWidget* Ribbon::makeSilent()
{
    auto* box = new QWidget(this);
    box->setObjectName(u"ribbon_silent"_s);
    box->setFixedWidth(m_theme.px(silentWidth));
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(new SignWidget(m_theme, Pictogram::Caution, tr("Caution"), box), 1);
    auto* word = new FitLabel(m_theme, u"ribbon_silent_word"_s, TextRole::Small, box);
    word->setRole(Role::OnRibbon);
    word->setBold(true);
    word->setAlignment(Qt::AlignCenter);
    word->setText(tr("No sound"));
    column->addWidget(word, 1);
    box->hide();
    return box;
}

void Ribbon::setSilent(bool silent)
{
    if (m_silent->isVisibleTo(this) == silent)
        return;
    m_silent->setVisible(silent);
    tick();
}

void Ribbon::setNotice(const QString& text)
{
    if (text == m_notice)
        return;
    m_notice = text;
    showReading();
}

/// As wide as two wide blocks and the rest leave it.
double Ribbon::readingWidth() const
{
    constexpr double gap = sizes::gap;
    constexpr double rounding = 1; // of so many widths to whole pixels
    constexpr double others =
        2 * sizes::margin + 2 * (MixBlock::wideMm + gap) + restWidth + gap + gap + helpWidth + rounding;
    return std::clamp(m_theme.metrics().mm(width()) - others, narrowReading, wideReading);
}

/// As wide as they can be and still be as many; narrow where not one would stand there otherwise.
Ribbon::Room Ribbon::room(std::size_t wanted) const
{
    const double gap = sizes::gap;
    const double free = m_theme.metrics().mm(width()) - 2 * sizes::margin - readingWidth() - gap - helpWidth - gap -
                        (m_silent->isVisibleTo(this) ? silentWidth + gap : 0);
    const auto fit = [&](double block, double rest) {
        return static_cast<std::size_t>(std::max(0.0, (free - rest + gap) / (block + gap)));
    };
    for (const double block : {blockWidth, MixBlock::wideMm, MixBlock::narrowMm}) {
        if (fit(block, 0) >= wanted)
            return {wanted, block};
        const std::size_t beside = fit(block, restWidth + gap);
        if (beside > 0 && (block < blockWidth || beside == fit(MixBlock::wideMm, restWidth + gap)))
            return {beside, block};
    }
    return {0, blockWidth};
}

void Ribbon::showBlocks(const std::vector<RunningMix>& mixes)
{
    const auto [shown, blockMm] = room(mixes.size());
    while (m_blocks.size() < shown) {
        const std::size_t at = m_blocks.size();
        auto* block = new MixBlock(m_theme, u"ribbon_block_%1"_s.arg(at), this);
        connect(block, &MixBlock::clicked, this, [this, at] { Q_EMIT repairTapped(m_shown[at]); });
        m_row->insertWidget(static_cast<int>(at), block);
        m_blocks.push_back(block);
    }
    const auto collision = nextCollision(hands::onBench(m_bench));
    m_shown.clear();
    for (std::size_t i = 0; i < m_blocks.size(); ++i) {
        m_blocks[i]->setVisible(i < shown);
        if (i >= shown)
            continue;
        m_blocks[i]->setFixedSize(m_theme.px(blockMm), m_theme.px(sizes::ribbon));
        m_shown.push_back(mixes[i].repair);
        m_blocks[i]->setShown(mixes[i].face, hands::blockText(mixes[i], collision, m_bench, m_words));
    }
    m_rest->setVisible(shown < mixes.size());
    m_rest->setTitle(u"+%1"_s.arg(mixes.size() - shown));
    m_rest->setAccessibleName(phrases::moreMixes(static_cast<int>(mixes.size() - shown)));
}

void Ribbon::showReading()
{
    if (!m_notice.isEmpty())
        return m_reading->setNotice(m_notice);
    const Instant now = m_bench.clock().now();
    const auto newest = m_bench.newestReading();
    if (!newest) {
        m_reading->setReading(phrases::noReading() + u"\n"_s + m_words.clockTime(now, seconds(0)));
        return;
    }
    const AirVerdict air = judgeAir(newest->reading, m_bench.assumptions().decision.filling);
    m_reading->setReading(
        phrases::readingLines(newest->reading, air.margin, elapsed(newest->at, now), now, m_words).join(u'\n'));
}

void Ribbon::tick()
{
    m_reading->setFixedWidth(m_theme.px(readingWidth()));
    showBlocks(m_bench.runningMixes());
    showReading();
}

void Ribbon::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.color(Role::RibbonGround));
}

void Ribbon::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    tick();
}

} // namespace strandbench
