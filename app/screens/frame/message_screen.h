// SPDX-License-Identifier: GPL-3.0-or-later
// One message fills the screen: a sign, what is so, what to do; and up to two ways, one of them held.
#pragma once

#include "pictures/pictogram.h"
#include "screens/frame/side_key.h"

namespace strandbench {

class HoldButton;

class MessageScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        Pictogram sign = Pictogram::None;
        QString signName; ///< for those who hear the screen; the sentence when empty
        QString headline;
        QString text;
        QString small;
        std::vector<CautionText> cautions;
        QString wayOn;
        TapButton::Kind wayOnKind = TapButton::Kind::Way;
        std::function<void()> go;
        QString holdName; ///< object name of the held key; empty for none
        QString holdTitle;
        std::function<void()> held;
        std::vector<SideKey> keys; ///< one stands below the sign; more of them, or one and a held key, in a row
        bool keysAside = false;    ///< on a wide glass several stand beside the message, not below it
        bool refuses = false;      ///< red edge and red sentence
        bool ofARepair = true;     ///< 'stop, ask' is of a repair: elsewhere there is nothing to stop
    };
    MessageScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

private:
    void buildSide(QWidget* box, QBoxLayout* row);
    void buildWords(QWidget* box, QBoxLayout* row);
    void buildKeys(QBoxLayout* column);
    void buildKeysAside();
    [[nodiscard]] HoldButton* makeHold(QWidget* parent);
    [[nodiscard]] bool keysInRow() const;

    Spec m_spec;
};

} // namespace strandbench
