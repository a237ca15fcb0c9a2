// SPDX-License-Identifier: GPL-3.0-or-later
// What a bench remembers of itself between starts: language, units, colours, hand, glass, people. Kept in an
// INI file beside the log, so that a bench moves as one folder.
#pragma once

#include "bench/instrument_setting.h"
#include "quantity/units.h"
#include "theme/theme.h"

#include <QString>
#include <QStringList>

#include <map>
#include <vector>

namespace strandbench {

struct Settings {
    QString language = QStringLiteral("en"); ///< ISO 639-1, one of carriedLanguages()
    UnitSystem units = UnitSystem::Metric;
    DayNight dayNight = DayNight::Day;
    Hand hand = Hand::Right;
    double pixelsPerMillimetre = 0;      ///< 0: not calibrated, the screen's own word is taken
    QString person;                      ///< at the bench now; empty: nobody yet
    QStringList people;                  ///< empty: the program's own tiles
    bool reducedMotion = false;          ///< nothing on the glass moves but figures
    int footSwitchKey = 0;               ///< the Qt::Key that stands for the way on; 0: any key
    QString photoFolder;                 ///< where pictures are looked for; empty: the person's own pictures
    QString backupFolder;                ///< of the log; empty: none is written
    int backupMinutes = 0;               ///< how often: one of backupIntervals(); 0: when it is asked for
    int backupsKept = 14;                ///< one of backupCounts()
    QStringList panels;                  ///< taken in lately, newest first
    std::map<QString, QString> products; ///< by code of the filler class: id of the sheet in use
    /// Lots kept at this bench, by sheet id or hardenerKey; the newest, which is in use, first.
    std::map<QString, QStringList> lots;
    /// By product of the shelf: below how much it is reordered, 0: never; a product without one by its package.
    std::map<QString, Mass> reorderBelow;
    InstrumentSetting scale;   ///< grams, for the mix and the bead's calibration
    InstrumentSetting climate; ///< air and humidity
    bool operator==(const Settings&) const = default;
};

/// What the lots of hardener are kept under.
inline const QString hardenerKey = QStringLiteral("hardener");

/// What the set-up offers: minutes between backups, and how many stay.
[[nodiscard]] const std::vector<int>& backupIntervals();
[[nodiscard]] const std::vector<int>& backupCounts();

/// The bounds of a believable glass, pixels a millimetre: outside, the screen's own word or a calibration
/// is not taken. 2 is a coarse wall panel, 20 a phone.
inline constexpr double leastPixelsPerMillimetre = 2.0;
inline constexpr double mostPixelsPerMillimetre = 20.0;

class SettingsFile {
public:
    explicit SettingsFile(QString path) : m_path(std::move(path)) {}

    /// What the file holds; what is missing or not allowed is as in a new bench, and is named in `odd`.
    struct Loaded {
        Settings settings;
        QStringList odd; ///< "language: xx", for the log of the start
    };
    [[nodiscard]] Loaded load() const;
    /// Writes it; false when the disk refuses (the bench goes on with it until it is closed).
    [[nodiscard]] bool save(const Settings& settings) const;

private:
    QString m_path;
};

} // namespace strandbench
