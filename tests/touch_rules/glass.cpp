// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/glass.h"

namespace strandbench::rules {

using namespace Qt::StringLiterals;

const std::vector<Glass>& glasses()
{
    static const std::vector<Glass> all{
        {u"1024x600"_s, {1024, 600}, 222},
        {u"1280x800"_s, {1280, 800}, 217},
        {u"1920x1080"_s, {1920, 1080}, 344},
        {u"800x1280"_s, {800, 1280}, 136},
    };
    return all;
}

} // namespace strandbench::rules
