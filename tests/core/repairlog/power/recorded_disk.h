// SPDX-License-Identifier: GPL-3.0-or-later
// What SQLite asks of the disk, in order, and what a disk may hold of it after the power is cut.
#pragma once

#include <QByteArray>

#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace strandbench::test {

/// What happened on the disk, or 'acknowledged' in between. Files are named without their folder.
struct DiskStep {
    enum class Kind { Create, Delete, Write, Truncate, Sync, SyncFolder, Acknowledged };
    Kind kind = Kind::Write;
    std::string file;
    QByteArray bytes;
    qsizetype at = 0; ///< where a write begins; the size that is left of a truncated file
};

/// Records what is done to the files beside and including one path while `run` runs; `run` is handed a function to
/// call at each acknowledgement.
[[nodiscard]] std::vector<DiskStep> recorded(const std::function<void(const std::function<void()>&)>& run);

using Files = std::map<std::string, QByteArray>;

/// What becomes of something that was not synced. Torn: of each sector of 512 bytes by itself, by chance.
enum class Fate { Kept, Dropped, Torn };

/// Says the fate of each of so many things not synced, the oldest first.
using Fates = std::function<Fate(int which, int ofAll)>;

/// The disk up to some step: what is surely there, and what may be. A file's bytes are sure once it was synced, its
/// name (or that it is gone) once its folder was: SQLite syncs the folder with the first sync of a journal or a WAL
/// that it made, and of no other file.
class RecordedDisk {
public:
    void take(const DiskStep& step);
    [[nodiscard]] int unsynced() const;
    /// The files after a cut now. `chance` is the seed of what is torn.
    [[nodiscard]] Files afterCut(const Fates& fates, std::uint32_t chance) const;

private:
    struct Node {
        QByteArray sure;
        std::vector<DiskStep> unsure;
    };
    struct Naming {
        std::string name;
        int node = -1; ///< -1: the name is gone
    };
    static void name(std::map<std::string, int>& folder, const Naming& naming);

    std::vector<Node> m_nodes;
    std::map<std::string, int> m_now;
    std::map<std::string, int> m_sure;
    std::vector<Naming> m_unsure;
};

} // namespace strandbench::test
