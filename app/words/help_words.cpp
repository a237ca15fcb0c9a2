// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/help_words.h"

#include "words/help_limits.h"
#include "words/table.h"

#include <algorithm>
#include <stdexcept>

namespace strandbench {
namespace {

const words::HelpLine& lineOf(HelpTopic topic)
{
    for (const std::span<const words::HelpLine> lines : {words::helpOfRepairs(), words::helpOfShop()})
        if (const auto found = std::ranges::find(lines, topic, &words::HelpLine::topic); found != lines.end())
            return *found;
    throw std::logic_error("a topic without its help");
}

} // namespace

HelpText helpText(HelpTopic topic)
{
    const words::HelpLine& line = lineOf(topic);
    const auto say = [](const char* text) { return words::inLanguage("Help", text); };
    return {say(line.title), say(line.purpose), say(line.how), say(line.wrong), say(line.limit)};
}

} // namespace strandbench
