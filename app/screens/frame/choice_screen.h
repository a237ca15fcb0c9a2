// SPDX-License-Identifier: GPL-3.0-or-later
// A question with tiles for answers, two rows, paged when there are more; a tap on a tile is the answer.
#pragma once

#include "screens/frame/side_key.h"

namespace strandbench {

class ChoiceScreen final : public Screen {
    Q_OBJECT
public:
    struct Tile {
        QString name; ///< object name, "answer_smc"
        QString title;
        QString second;
        TapButton::Picture picture;
        bool refuses = false; ///< leads to a stop: red outline
        bool chosen = false;  ///< answered so before
        std::function<void()> tapped;
    };
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        std::vector<Tile> tiles;
        QString wayOn;         ///< title of the way on; empty leaves it disabled
        QString moreTitle;     ///< "More answers"
        bool ofARepair = true; ///< 'stop, ask' is of a repair: elsewhere there is nothing to stop
    };
    ChoiceScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

    /// Puts something beside the tiles, below them on an upright glass. share: of the room, the tiles' being 2; 0: as
    /// little as it needs.
    void addBeside(QWidget* beside, int share = 0);
    /// A key among the tiles that is no answer: it shares the last place with 'more', so that no tile is narrower.
    void setSideKey(const SideKey& key);
    /// What a scanner read is handed over; false: not wanted.
    void onScan(std::function<bool(const QString&)> scan) { m_scan = std::move(scan); }

    void setWriting(bool writing) override;
    bool scanned(const QString& text) override { return m_scan && m_scan(text); }

Q_SIGNALS:
    void wayOnTapped();

private:
    void showPage(std::size_t first);
    [[nodiscard]] TapButton* makeTile(const Tile& tile);
    [[nodiscard]] TapButton* makeMoreTile(std::size_t next);
    [[nodiscard]] QWidget* withSideKey(TapButton* more);
    void lay(const std::vector<QWidget*>& tiles);
    [[nodiscard]] std::size_t perPage() const;

    Spec m_spec;
    std::optional<SideKey> m_side;
    std::function<bool(const QString&)> m_scan;
    QWidget* m_page = nullptr;
};

} // namespace strandbench
