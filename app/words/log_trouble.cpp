// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/log_trouble.h"

#include "words/table.h"

#include <QtGlobal>

namespace strandbench {
namespace {

struct Pair {
    const char* headline;
    const char* whatToDo;
};

constexpr words::Line breaks[] = {
    {"integrity", QT_TRANSLATE_NOOP("LogTrouble", "the database file itself is damaged")},
    {"schema", QT_TRANSLATE_NOOP("LogTrouble", "its tables are not those of this program")},
    {"chain", QT_TRANSLATE_NOOP("LogTrouble", "an entry was changed, removed or put in")},
    {"event", QT_TRANSLATE_NOOP("LogTrouble", "an entry cannot be read, or cannot follow the one before")},
    {"summary", QT_TRANSLATE_NOOP("LogTrouble", "a summary does not match its entries")},
    {"blob", QT_TRANSLATE_NOOP("LogTrouble", "a stored sheet or table was changed")},
    {"expected_head", QT_TRANSLATE_NOOP("LogTrouble", "the expected end of the chain is not in it")},
};

Pair textOf(LogTrouble trouble)
{
    switch (trouble) {
    case LogTrouble::CannotOpen:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The log cannot be opened."),
                QT_TRANSLATE_NOOP("LogTrouble", "Check that its folder is there and may be used.")};
    case LogTrouble::NotADatabase:
        return {QT_TRANSLATE_NOOP("LogTrouble", "This file is not a log."),
                QT_TRANSLATE_NOOP("LogTrouble", "Choose another file; this one is left as it is.")};
    case LogTrouble::NotALog:
        return {QT_TRANSLATE_NOOP("LogTrouble", "This database belongs to another program."),
                QT_TRANSLATE_NOOP("LogTrouble", "Choose another file; this one is left as it is.")};
    case LogTrouble::NewerVersion:
        return {QT_TRANSLATE_NOOP("LogTrouble", "A newer version of this program wrote the log."),
                QT_TRANSLATE_NOOP("LogTrouble", "Use that version; the log is left as it is.")};
    case LogTrouble::ReadOnly:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The log can be read but not written."),
                QT_TRANSLATE_NOOP("LogTrouble", "Give the right to write to the file and its folder.")};
    case LogTrouble::Locked:
        return {QT_TRANSLATE_NOOP("LogTrouble", "Another program holds the log."),
                QT_TRANSLATE_NOOP("LogTrouble", "Close it, then try again.")};
    case LogTrouble::InUse:
        return {QT_TRANSLATE_NOOP("LogTrouble", "Another copy of the program has this bench."),
                QT_TRANSLATE_NOOP("LogTrouble", "Work there, or close it and try again.")};
    case LogTrouble::NeedsPin:
        return {QT_TRANSLATE_NOOP("LogTrouble", "This is the supervisor’s to do."),
                QT_TRANSLATE_NOOP("LogTrouble", "It needs the supervisor’s PIN.")};
    case LogTrouble::DiskFull:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The disk is full."),
                QT_TRANSLATE_NOOP("LogTrouble", "Make room, then try again. The last confirmed step is kept.")};
    case LogTrouble::Damaged:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The log is damaged."),
                QT_TRANSLATE_NOOP("LogTrouble", "Keep the file as it is and fetch the last backup.")};
    case LogTrouble::CutShort:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The log’s file is not all there."),
                QT_TRANSLATE_NOOP("LogTrouble", "Copy it again from where it came, or fetch the last backup.")};
    case LogTrouble::IoError:
        return {
            QT_TRANSLATE_NOOP("LogTrouble", "The disk does not answer."),
            QT_TRANSLATE_NOOP("LogTrouble", "Check disk and cable, then try again. The last confirmed step is kept.")};
    case LogTrouble::Gone:
        return {QT_TRANSLATE_NOOP("LogTrouble", "The log is no longer where it was."),
                QT_TRANSLATE_NOOP("LogTrouble", "Put its disk or its folder back. The last confirmed step is kept.")};
    case LogTrouble::OtherLog:
        return {QT_TRANSLATE_NOOP("LogTrouble", "Another log lies there now."),
                QT_TRANSLATE_NOOP("LogTrouble", "It lacks steps that were confirmed here. Put the right one back.")};
    case LogTrouble::OlderVersion:
        return {QT_TRANSLATE_NOOP("LogTrouble", "An older version of this program wrote the log."),
                QT_TRANSLATE_NOOP("LogTrouble", "It can be brought up to this version. A copy as it is stays beside "
                                                "it, for the older program.")};
    case LogTrouble::AlreadyOpen:
        return {QT_TRANSLATE_NOOP("LogTrouble", "This panel is already open in this job."),
                QT_TRANSLATE_NOOP("LogTrouble", "Open its card, or give this panel another name.")};
    case LogTrouble::DoesNotFollow:
        return {QT_TRANSLATE_NOOP("LogTrouble", "This step does not follow the last one."),
                QT_TRANSLATE_NOOP("LogTrouble", "Go back home and open the card again.")};
    }
    Q_UNREACHABLE();
}

} // namespace

LogTroubleText logTrouble(LogTrouble trouble)
{
    const Pair text = textOf(trouble);
    return {words::inLanguage("LogTrouble", text.headline), words::inLanguage("LogTrouble", text.whatToDo)};
}

QString breakName(const QString& breaksAt) { return words::lookUp("LogTrouble", breaks, breaksAt); }

} // namespace strandbench
