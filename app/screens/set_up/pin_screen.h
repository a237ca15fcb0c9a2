// SPDX-License-Identifier: GPL-3.0-or-later
// Asks for a PIN by large keys. The digits are never shown, never kept as a draft, and gone with the screen.
#pragma once

#include "roles/pin_door.h"
#include "screens/frame/screen.h"
#include "touch/key_pad.h"

namespace strandbench {

class PinScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        QString wayOn;
        std::function<Duration()> waitLeft; ///< until one may be tried
    };
    PinScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

    /// Tells why the door stayed shut, and asks anew.
    void refused(const PinRefused& why);
    /// While a PIN is looked at: that takes some tenths of a second.
    void setBusy(bool busy);
    void tick() override;

Q_SIGNALS:
    void given(const QString& pin);

private:
    void give();
    void showDots();
    void enable();

    Spec m_spec;
    FitLabel* m_dots = nullptr;
    KeyPad* m_keys = nullptr;
    bool m_busy = false;
    bool m_waits = false;
};

} // namespace strandbench
