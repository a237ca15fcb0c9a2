// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/settings.h"

#include "languages.h"

#include <QSettings>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString dayCode = u"day"_s;
const QString nightCode = u"night"_s;
const QString leftCode = u"left"_s;
const QString rightCode = u"right"_s;
const QString fullCode = u"full"_s;
const QString reducedCode = u"reduced"_s;
const QString productsGroup = u"products"_s;
const QString lotsGroup = u"lots"_s;
const QString reorderGroup = u"reorder_below_g"_s;
const QString scaleGroup = u"scale"_s;
const QString climateGroup = u"climate"_s;

QStringList keysBelow(const QSettings& file, const QString& group)
{
    QStringList keys;
    for (const QString& key : file.allKeys())
        if (key.startsWith(group + u'/'))
            keys << key.mid(group.size() + 1);
    return keys;
}

/// Takes one value of the file if it is among those allowed, else names it.
template <class T>
void take(const QSettings& file, const QString& key, const std::vector<std::pair<QString, T>>& allowed, T& into,
          QStringList& odd)
{
    if (!file.contains(key))
        return;
    const QString given = file.value(key).toString();
    for (const auto& [code, value] : allowed) {
        if (code == given) {
            into = value;
            return;
        }
    }
    odd << key + u": "_s + given;
}

std::vector<std::pair<QString, int>> asCodes(const std::vector<int>& numbers)
{
    std::vector<std::pair<QString, int>> codes;
    for (int each : numbers)
        codes.emplace_back(QString::number(each), each);
    return codes;
}

void takeInstrument(const QSettings& file, const QString& group, InstrumentSetting& into, QStringList& odd)
{
    std::vector<std::pair<QString, QString>> frames;
    for (const QString& each : serialFrames())
        frames.emplace_back(each, each);
    into.port = file.value(group + u"/port"_s).toString();
    take(file, group + u"/speed"_s, asCodes(serialSpeeds()), into.baud, odd);
    take(file, group + u"/frame"_s, frames, into.frame, odd);
    // A comma in an INI file makes a list of a value that somebody wrote without quotes.
    into.pattern = file.value(group + u"/pattern"_s).toStringList().join(u',');
}

void keepInstrument(QSettings& file, const QString& group, const InstrumentSetting& instrument)
{
    file.setValue(group + u"/port"_s, instrument.port);
    file.setValue(group + u"/speed"_s, instrument.baud);
    file.setValue(group + u"/frame"_s, instrument.frame);
    file.setValue(group + u"/pattern"_s, instrument.pattern);
}

} // namespace

const std::vector<int>& serialSpeeds()
{
    static const std::vector<int> all{1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};
    return all;
}

const QStringList& serialFrames()
{
    static const QStringList all{u"8N1"_s, u"7E1"_s, u"7O1"_s, u"8E1"_s, u"8N2"_s};
    return all;
}

const std::vector<int>& backupIntervals()
{
    static const std::vector<int> all{0, 60, 240, 1440};
    return all;
}

const std::vector<int>& backupCounts()
{
    static const std::vector<int> all{7, 14, 30};
    return all;
}

SettingsFile::Loaded SettingsFile::load() const
{
    Loaded loaded;
    const QSettings file(m_path, QSettings::IniFormat);
    std::vector<std::pair<QString, QString>> languages;
    for (const QString& code : carriedLanguages())
        languages.emplace_back(code, code);
    Settings& settings = loaded.settings;
    take(file, u"language"_s, languages, settings.language, loaded.odd);
    take(file, u"units"_s,
         {{codeOf(UnitSystem::Metric), UnitSystem::Metric}, {codeOf(UnitSystem::UsCustomary), UnitSystem::UsCustomary}},
         settings.units, loaded.odd);
    take(file, u"colours"_s, {{dayCode, DayNight::Day}, {nightCode, DayNight::Night}}, settings.dayNight, loaded.odd);
    take(file, u"hand"_s, {{rightCode, Hand::Right}, {leftCode, Hand::Left}}, settings.hand, loaded.odd);
    if (file.contains(u"pixels_per_millimetre"_s)) {
        bool number = false;
        const double given = file.value(u"pixels_per_millimetre"_s).toDouble(&number);
        if (number && given >= leastPixelsPerMillimetre && given <= mostPixelsPerMillimetre)
            settings.pixelsPerMillimetre = given;
        else
            loaded.odd << u"pixels_per_millimetre: "_s + file.value(u"pixels_per_millimetre"_s).toString();
    }
    take(file, u"motion"_s, {{fullCode, false}, {reducedCode, true}}, settings.reducedMotion, loaded.odd);
    if (file.contains(u"foot_switch_key"_s)) {
        bool number = false;
        const int given = file.value(u"foot_switch_key"_s).toInt(&number);
        if (number && given >= 0)
            settings.footSwitchKey = given;
        else
            loaded.odd << u"foot_switch_key: "_s + file.value(u"foot_switch_key"_s).toString();
    }
    settings.photoFolder = file.value(u"photo_folder"_s).toString();
    settings.backupFolder = file.value(u"backup_folder"_s).toString();
    take(file, u"backup_every_min"_s, asCodes(backupIntervals()), settings.backupMinutes, loaded.odd);
    take(file, u"backups_kept"_s, asCodes(backupCounts()), settings.backupsKept, loaded.odd);
    settings.panels = file.value(u"panels"_s).toStringList();
    for (const QString& key : keysBelow(file, productsGroup))
        settings.products[key] = file.value(productsGroup + u'/' + key).toString();
    for (const QString& key : keysBelow(file, lotsGroup))
        settings.lots[key] = file.value(lotsGroup + u'/' + key).toStringList();
    for (const QString& key : keysBelow(file, reorderGroup)) {
        bool number = false;
        const QString given = file.value(reorderGroup + u'/' + key).toString();
        const double level = given.toDouble(&number);
        if (number && level >= 0)
            settings.reorderBelow[key] = grams(level);
        else
            loaded.odd << reorderGroup + u'/' + key + u": "_s + given;
    }
    takeInstrument(file, scaleGroup, settings.scale, loaded.odd);
    takeInstrument(file, climateGroup, settings.climate, loaded.odd);
    settings.people = file.value(u"people"_s).toStringList();
    settings.person = file.value(u"person"_s).toString();
    return loaded;
}

bool SettingsFile::save(const Settings& settings) const
{
    QSettings file(m_path, QSettings::IniFormat);
    file.setValue(u"language"_s, settings.language);
    file.setValue(u"units"_s, codeOf(settings.units));
    file.setValue(u"colours"_s, settings.dayNight == DayNight::Night ? nightCode : dayCode);
    file.setValue(u"hand"_s, settings.hand == Hand::Left ? leftCode : rightCode);
    if (settings.pixelsPerMillimetre > 0)
        file.setValue(u"pixels_per_millimetre"_s, settings.pixelsPerMillimetre);
    file.setValue(u"motion"_s, settings.reducedMotion ? reducedCode : fullCode);
    file.setValue(u"foot_switch_key"_s, settings.footSwitchKey);
    file.setValue(u"photo_folder"_s, settings.photoFolder);
    file.setValue(u"backup_folder"_s, settings.backupFolder);
    file.setValue(u"backup_every_min"_s, settings.backupMinutes);
    file.setValue(u"backups_kept"_s, settings.backupsKept);
    file.setValue(u"panels"_s, settings.panels);
    for (const auto& [filler, sheet] : settings.products)
        file.setValue(productsGroup + u'/' + filler, sheet);
    for (const auto& [product, lots] : settings.lots)
        file.setValue(lotsGroup + u'/' + product, lots);
    for (const auto& [product, level] : settings.reorderBelow)
        file.setValue(reorderGroup + u'/' + product, inGrams(level));
    keepInstrument(file, scaleGroup, settings.scale);
    keepInstrument(file, climateGroup, settings.climate);
    file.setValue(u"people"_s, settings.people);
    file.setValue(u"person"_s, settings.person);
    file.sync();
    return file.status() == QSettings::NoError;
}

} // namespace strandbench
