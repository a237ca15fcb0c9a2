// SPDX-License-Identifier: GPL-3.0-or-later
// Logs to bring in and backups to restore: which, what would come of it, what came of it; and a log that cannot be
// opened, with the ways out.
#pragma once

#include "bench/keeper.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

enum class Keeping { Folder, BackUp, Check, Merge, Restore };

/// Local date and time of a moment, as the language writes them.
[[nodiscard]] QString momentText(qint64 utcMs, const Words& words);

/// The logs of a folder (to bring in) or its backups (to restore), the newest first; a key leads to another folder.
class LogPickScreen final : public Screen {
    Q_OBJECT
public:
    /// what: Merge or Restore. log: the bench's own, which is not offered.
    LogPickScreen(const Surroundings& around, Keeping what, const QString& folder, const QString& log,
                  QWidget* parent = nullptr);

Q_SIGNALS:
    void chosen(const QString& path);
    void folderWanted();

private:
    struct Offer {
        QString path;
        QString title;
        QString second;
    };
    [[nodiscard]] std::vector<Offer> backups() const;
    [[nodiscard]] std::vector<Offer> logs(const QString& own) const;

    QString m_folder;
};

/// While it is found out what would come of it, and while it is done.
[[nodiscard]] Screen* makeKeepingWait(const Surroundings& around, Keeping what, bool dry, QWidget* parent);

/// What bringing in would do, or did (go: null).
[[nodiscard]] Screen* makeMergeScreen(const Surroundings& around, const MergeReport& report, const QString& from,
                                      const std::function<void()>& go, const std::function<void()>& done,
                                      QWidget* parent);
/// What restoring would do, or did (go: null).
[[nodiscard]] Screen* makeRestoreScreen(const Surroundings& around, const RestoreReport& report, const QString& from,
                                        const std::function<void()>& go, const std::function<void()>& done,
                                        QWidget* parent);
/// It could not be done.
[[nodiscard]] Screen* makeKeepingTrouble(const Surroundings& around, Keeping what, const LogFailure& failure,
                                         const QString& path, const std::function<void()>& done, QWidget* parent);

} // namespace strandbench
