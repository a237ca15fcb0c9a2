// SPDX-License-Identifier: GPL-3.0-or-later
// Several of many: keys that are picked by a tap and given back by another; in order, they carry their number.
#pragma once

#include "screens/frame/side_key.h"

namespace strandbench {

class PickScreen final : public Screen {
    Q_OBJECT
public:
    struct Item {
        QString code;
        QString title;
    };
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        std::vector<Item> items;
        bool inOrder = false; ///< the order of the taps counts, and is shown
        bool mayBeNone = false;
        QString wayOn;
        std::function<void(const std::vector<QString>& codes)> done;
        std::optional<SideKey> side; ///< below the keys
    };
    PickScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

private:
    void pick(const QString& code);
    void showPicked();

    Spec m_spec;
    std::vector<QString> m_picked;
};

} // namespace strandbench
