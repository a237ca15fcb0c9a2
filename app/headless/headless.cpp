// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/headless.h"

#include "headless/command_line.h"
#include "languages.h"
#include "words/table.h"

#include <QGuiApplication>
#include <QJsonDocument>
#include <QLatin1StringView>
#include <QLoggingCategory>
#include <QTranslator>

#include <algorithm>
#include <cstdio>
#include <exception>
#include <memory>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

/// True when every byte reached the stream; a full disk shows only when it is flushed.
bool write(std::FILE* stream, const QString& text)
{
    const QByteArray bytes = text.toUtf8();
    const bool written = std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream) ==
                         static_cast<std::size_t>(bytes.size());
    return std::fflush(stream) == 0 && written;
}

/// Prints a command's outcome and gives the exit status.
Status print(const Outcome& outcome)
{
    for (const QString& each : outcome.messages)
        write(stderr, words::oneLine(each) + u'\n'); // nobody is left to tell when this one fails
    if (!outcome.json && outcome.bytes.isEmpty())
        return outcome.status;
    if (write(stdout, outcome.json ? QString::fromUtf8(QJsonDocument(*outcome.json).toJson(QJsonDocument::Indented))
                                   : QString::fromUtf8(outcome.bytes)))
        return outcome.status;
    write(stderr, say(QT_TRANSLATE_NOOP("Headless", "standard output cannot be written")) + u'\n');
    return Status::Trouble;
}

Outcome printed(const QString& text)
{
    if (write(stdout, text))
        return {};
    return ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "standard output cannot be written")));
}

/// Installs the language; a refusal when the program does not carry it.
std::optional<Outcome> speak(const QString& asked, QTranslator& translator, const Words& words)
{
    const QString language = asked.isEmpty() ? u"en"_s : asked;
    const QStringList carried = carriedLanguages();
    if (!asked.isEmpty() && !carried.contains(asked))
        return refused({{u"--lang"_s, asked, FaultKind::NotOneOf, carried}}, words);
    if (translator.load(u":/i18n/strandbench_%1.qm"_s.arg(language)))
        QCoreApplication::installTranslator(&translator);
    return std::nullopt;
}

Outcome answer(Ask ask, const Command* command)
{
    return printed(ask == Ask::Help ? helpOf(command)
                                    : u"strandbench "_s + QCoreApplication::applicationVersion() + u'\n');
}

Outcome noCommand(const QString& word)
{
    QStringList names;
    for (const Command& each : commands())
        names << QString::fromLatin1(each.name);
    return ended(Status::Refused, say(QT_TRANSLATE_NOOP("Headless", "'%1': no such command; there is: %2"),
                                      {word, names.join(u", "_s)}));
}

Outcome runArguments(QStringList arguments, const Words& words)
{
    const Command* command = nullptr;
    if (!arguments.isEmpty() && !arguments.constFirst().startsWith(u'-')) {
        command = commandNamed(arguments.constFirst());
        if (!command)
            return noCommand(arguments.constFirst());
        arguments.removeFirst();
    }
    const Parsed parsed = parse(command, arguments);
    if (const auto* ask = std::get_if<Ask>(&parsed))
        return answer(*ask, command);
    if (const auto* messages = std::get_if<QStringList>(&parsed))
        return {Status::Refused, std::nullopt, *messages};
    if (!command)
        return printed(helpOf(nullptr));
    return command->run(std::get<Arguments>(parsed), words);
}

/// True for a command with an option that makes it draw. Asked before the parser can: the kind of application
/// object hangs on it.
bool paints(int argc, char** argv)
{
    const Command* command = argc > 1 ? commandNamed(QString::fromLocal8Bit(argv[1])) : nullptr;
    if (!command)
        return false;
    const auto isFor = [](const char* argument, const char* option) {
        return QString::fromLocal8Bit(argument).section(u'=', 0, 0).endsWith(u'-' + QString::fromLatin1(option));
    };
    return std::any_of(argv + 2, argv + argc, [&](const char* each) {
        return std::any_of(command->paintsFor.begin(), command->paintsFor.end(),
                           [&](const char* option) { return isFor(each, option); });
    });
}

/// A console program, or one that draws without a display.
std::unique_ptr<QCoreApplication> makeApplication(int& argc, char** argv)
{
    if (!paints(argc, argv))
        return std::make_unique<QCoreApplication>(argc, argv);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Qt remarks on a script's surroundings (no runtime folder); standard error is for the command's own lines.
    QLoggingCategory::setFilterRules(u"default.warning=false"_s);
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace

bool wanted(int argc, char** argv)
{
    if (argc < 2)
        return false;
    if (argv[1][0] != '-')
        return true;
    for (int i = 1; i < argc; ++i) {
        const QLatin1StringView word(argv[i]);
        if (word == "-h"_L1 || word == "-v"_L1)
            return true;
        if (word == "--log"_L1 || word == "--glass"_L1)
            ++i; // its value
        else if (word.startsWith("--"_L1) && !word.startsWith("--log="_L1) && !word.startsWith("--glass="_L1))
            return true;
    }
    return false;
}

int run(int argc, char** argv)
{
    // Qt speaks up on standard error in a locale that is not UTF-8, and there is nothing here for a locale
    // to change: numbers have a decimal point, and --lang sets the language.
    qputenv("LC_ALL", "C.UTF-8");
    const auto application = makeApplication(argc, argv);
    QCoreApplication::setApplicationName(u"strandbench"_s);
    QCoreApplication::setApplicationVersion(QStringLiteral(STRANDBENCH_VERSION));
    const Words words(UnitSystem::Metric, QLocale::c());
    const QStringList arguments = QCoreApplication::arguments().mid(1);
    QTranslator translator;
    if (const auto refusal = speak(languageAsked(arguments), translator, words))
        return print(*refusal);
    try {
        return print(runArguments(arguments, words));
    } catch (const std::exception& trouble) {
        return print(ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "A defect of the program: %1"),
                                                {QString::fromUtf8(trouble.what())})));
    }
}

} // namespace strandbench::headless
