// SPDX-License-Identifier: GPL-3.0-or-later
// What a person sees when the log cannot be opened: what is wrong, what to do, and the ways out. Nothing is written
// into the log.
#pragma once

#include "bench/settings.h"
#include "bench/worker.h"
#include "repairlog/repair_log.h"

#include <QWidget>

#include <memory>

namespace strandbench {

class FitLabel;
class TapButton;

class TroubleWindow final : public QWidget {
    Q_OBJECT
public:
    /// runs: how what holds is saved; beside the glass, but for tests.
    TroubleWindow(const LogFailure& failure, const QString& path, const Settings& settings,
                  double screenPixelsPerMillimetre, Worker::Runs runs = Worker::Runs::InThread);
    ~TroubleWindow() override;

    /// What the person chose; which of them is offered, the trouble says.
    enum class Way {
        Close,
        Look,    ///< only
        Again,   ///< try to open it again
        BringUp, ///< to this program's version
        Restore, ///< a backup in its place
    };
    [[nodiscard]] Way chosen() const { return m_chosen; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    TapButton* key(const QString& name, const QString& title, Way way);
    TapButton* plainKey(const QString& name, const QString& title);
    void saveWhatHolds();
    void tellSaved(const QString& text);

    QString m_path;
    QString m_backupFolder;
    Way m_chosen = Way::Close;
    std::unique_ptr<Theme> m_theme;
    Worker m_rescuing;
    std::vector<TapButton*> m_keys;
    FitLabel* m_whatToDo = nullptr;
};

} // namespace strandbench
