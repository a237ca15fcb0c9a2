// SPDX-License-Identifier: GPL-3.0-or-later
// What a command is: its options as data and the function that runs it. Inside headless only.
#pragma once

#include "headless/headless.h"
#include "quantity/fault.h"
#include "words/words.h"

#include <QJsonObject>
#include <QMap>
#include <QStringList>

#include <optional>
#include <vector>

namespace strandbench::headless {

/// The arguments of one command, every option given at most once.
struct Arguments {
    QMap<QString, QString> options; ///< by name without dashes
    QString file;                   ///< of a command that takes one; '-' is standard input
};

/// What a command ends with. Nothing is printed by the command itself.
struct Outcome {
    Status status = Status::Done;
    std::optional<QJsonObject> json; ///< to standard output
    QStringList messages;            ///< to standard error, one line each
    QByteArray bytes = {};           ///< to standard output instead of JSON
};

/// An option of a command: its name, what stands for its value in the help, and one line about it.
struct OptionRule {
    const char* name;
    const char* value; ///< null for an option that takes none
    const char* help;  ///< marked for translation in the context "Headless"
    bool required = false;
};

struct Command {
    const char* name;
    const char* help; ///< likewise
    bool takesFile = false;
    std::vector<OptionRule> options;
    Outcome (*run)(const Arguments& arguments, const Words& words);
    std::vector<const char*> paintsFor = {}; ///< the options with which it draws, off screen
};

/// Every command, in the order of the help.
[[nodiscard]] const std::vector<Command>& commands();
/// The command of this name; null when there is none.
[[nodiscard]] const Command* commandNamed(const QString& name);

[[nodiscard]] Command planCommand();
[[nodiscard]] Command mixCommand();
[[nodiscard]] Command cureCommand();
[[nodiscard]] Command airCommand();
[[nodiscard]] Command reportCommand();
[[nodiscard]] Command verifyCommand();
[[nodiscard]] Command backupCommand();
[[nodiscard]] Command keepCommand();
[[nodiscard]] Command mergeCommand();
[[nodiscard]] Command restoreCommand();
[[nodiscard]] Command rescueCommand();
[[nodiscard]] Command superviseCommand();

/// Refuses with one line a fault.
[[nodiscard]] Outcome refused(const Faults& faults, const Words& words);
/// Ends with a status other than done and one message.
[[nodiscard]] Outcome ended(Status status, const QString& message);

/// Reasons as the contract writes them: [{"code":…,"text":…}].
[[nodiscard]] QJsonArray reasonsToJson(const std::vector<Reason>& reasons, const Words& words);

/// A text in the language of the messages.
[[nodiscard]] QString say(const char* text, const QStringList& arguments = {});

} // namespace strandbench::headless
