// SPDX-License-Identifier: GPL-3.0-or-later
// Puddle and bead laid by eye at true size: no figure helps.
#pragma once

#include "pictures/puddle_picture.h"
#include "screens/frame/screen.h"

namespace strandbench {

class MixByEyeScreen final : public Screen {
    Q_OBJECT
public:
    MixByEyeScreen(const Surroundings& around, const QString& context, QWidget* parent = nullptr);

Q_SIGNALS:
    void mixed(Length puddle, Length bead);

private:
    [[nodiscard]] TapButton* key(const QString& name, const QString& title, Length* what, double byMm);
    void showMix();

    PuddlePicture* m_picture = nullptr;
    Length m_puddle;
    Length m_bead;
};

} // namespace strandbench
