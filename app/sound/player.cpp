// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/player.h"

namespace strandbench {

Player::Player(QObject* parent) : QObject(parent) {}
Player::~Player() = default;

} // namespace strandbench
