// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/mixes_screen.h"

#include "screens/job/hands_words.h"
#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

MixesScreen::MixesScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_mixes"_s, parent)
{
    buildFrame({}, tr("Every mix that runs: the most urgent first"));
    answers()->setWayOn({}); // a mix is the way on
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    content()->addLayout(grid, 1);
    const int across = columns();
    for (int i = 0; i < static_cast<int>(room()); ++i) {
        auto* block = new MixBlock(theme(), u"mix_%1"_s.arg(i), this);
        block->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
        connect(block, &MixBlock::clicked, this,
                [this, i] { Q_EMIT repairTapped(m_shown.at(static_cast<std::size_t>(i))); });
        grid->addWidget(block, i / across, i % across);
        grid->setRowStretch(i / across, 1);
        grid->setColumnStretch(i % across, 1);
        m_blocks.push_back(block);
    }
    m_more = new TapButton(theme(), u"more_mixes"_s, TapButton::Kind::Quiet, this);
    m_more->setTitle(tr("More"));
    connect(m_more, &TapButton::clicked, this, [this] {
        m_first += room() - 1;
        tick();
    });
    const int last = static_cast<int>(room()) - 1;
    grid->addWidget(m_more, last / across, last % across);
    tick();
}

void MixesScreen::tick()
{
    const std::vector<RunningMix> mixes = around().bench.runningMixes();
    const bool paged = mixes.size() > room();
    const std::size_t page = paged ? room() - 1 : room();
    if (m_first >= mixes.size() || !paged)
        m_first = 0;
    const auto collision = nextCollision(hands::onBench(around().bench));
    m_shown.clear();
    for (std::size_t i = 0; i < m_blocks.size(); ++i) {
        const bool there = i < page && m_first + i < mixes.size();
        m_blocks[i]->setVisible(there);
        if (!there)
            continue;
        const RunningMix& mix = mixes[m_first + i];
        m_shown.push_back(mix.repair);
        m_blocks[i]->setShown(mix.face, hands::blockText(mix, collision, around().bench, words()));
    }
    m_more->setVisible(paged);
    m_more->setSecondLine(tr("%n in all", nullptr, static_cast<int>(mixes.size())));
    setSentence(mixes.empty() ? tr("No mix runs") : tr("Every mix that runs: the most urgent first"));
    setContext(collision ? hands::collision(*collision, around()) : QString());
}

} // namespace strandbench
