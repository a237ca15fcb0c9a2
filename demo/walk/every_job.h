// SPDX-License-Identifier: GPL-3.0-or-later
// A demo job for every walk that comes through the door, and for every refusal. Every figure here is invented.
#pragma once

#include "walk/walk.h"

namespace strandbench {

/// A repair that is walked from taking in to handing over.
struct WalkedJob {
    QString name; ///< "crack_frp": substrate and damage, for tests and pictures
    DemoJob job;
};

/// A repair that is stopped, and the same one when what was wrong has been put right.
struct RefusedJob {
    QString stop; ///< code of the stop that its screen opens with
    DemoJob found;
    DemoJob putRight;
    bool zincNamed = true; ///< false: no loaded sheet names zinc
};

/// One walk for each way that a panel takes through the program.
[[nodiscard]] const std::vector<WalkedJob>& everyWalk();
/// One job for each refusal that an answer or a reading can cause.
[[nodiscard]] const std::vector<RefusedJob>& everyRefusal();

/// The demo sheets with none of them naming zinc.
[[nodiscard]] Catalogue catalogueWithoutZinc();

/// A sound gouge in a laminate with every answer and figure given, whether its walk asks for it or not.
[[nodiscard]] DemoJob anyJob(const QString& number, const QString& panel);

} // namespace strandbench
