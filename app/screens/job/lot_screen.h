// SPDX-License-Identifier: GPL-3.0-or-later
// Product and lots in the hand: a tap on a tile takes it, and the bench remembers it.
#pragma once

#include "screens/job/in_hand.h"
#include "screens/job/lot_keys.h"
#include "screens/frame/screen.h"

namespace strandbench {

class LotScreen final : public Screen {
    Q_OBJECT
public:
    /// asked: a lot that was scanned and that nobody told yet what it is of; empty: none.
    LotScreen(const Surroundings& around, const Repair& repair, BatchRef batch, const QString& asked,
              QWidget* parent = nullptr);

    /// A known lot is taken; of an unknown one it is asked whether it is filler or hardener. While a lot is keyed in
    /// it is that one.
    bool scanned(const QString& text) override;
    [[nodiscard]] QVariantMap draft() const override;
    void setDraft(const QVariantMap& draft) override;

Q_SIGNALS:
    void settingsWanted(const strandbench::Settings& wanted);
    void pageWanted(const strandbench::LotOfProduct& lot); ///< what this lot taught

private:
    enum class Part { Product, Filler, Hardener };
    enum class Page { Tiles, Typing, Asking };
    struct Tile {
        QString name;
        QString title;
        QString second;
        bool chosen = false;
        std::function<void()> tapped;
    };

    void showLater(Page page);
    void show(Page page);
    [[nodiscard]] QWidget* parts();
    [[nodiscard]] TapButton* partKey(Part part, const QString& name, const QString& title, const QString& second);
    [[nodiscard]] QWidget* tiles();
    [[nodiscard]] QWidget* asking();
    [[nodiscard]] std::vector<Tile> products();
    [[nodiscard]] std::vector<Tile> lots();
    [[nodiscard]] TapButton* makeTile(const Tile& tile, QWidget* parent);
    [[nodiscard]] QWidget* removeKey(QWidget* parent);
    void lay(QWidget* page, const std::vector<QWidget*>& tiles, int columns);
    void typed(const QString& text);
    void takeTyped();
    void take(const QString& key, const QString& lot);
    void use(const QString& sheet);
    void wayOn();
    void back();
    [[nodiscard]] BatchInHand batch() const;
    [[nodiscard]] QString keyOf(Part part) const; ///< what the part's lots are kept under

    Repair m_repair;
    BatchRef m_ref;
    Part m_part = Part::Filler;
    Page m_page = Page::Tiles;
    QString m_asked;
    QString m_typed;
    std::size_t m_first = 0; ///< of the lots or products shown
    QWidget* m_body = nullptr;
    LotKeys* m_keys = nullptr; ///< while a lot is keyed in
};

} // namespace strandbench
