// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/terms.h"

#include "exchange/built_in.h"
#include "exchange/strict_json.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestId = 40;
constexpr int longestTerm = 40;

Term readTerm(StrictObject& json)
{
    Term term;
    term.id = json.text(u"id"_s, longestId);
    term.en = json.text(u"en"_s, longestTerm);
    term.es = json.text(u"es"_s, longestTerm);
    term.fr = json.text(u"fr"_s, longestTerm);
    term.de = json.text(u"de"_s, longestTerm);
    for (const QString& language : {u"es"_s, u"fr"_s, u"de"_s})
        if (const QString key = u"stems_"_s + language; json.has(key))
            term.stems[language] = json.texts(key, longestTerm);
    json.finish();
    return term;
}

} // namespace

const QString& Term::in(const QLocale& locale) const
{
    switch (locale.language()) {
    case QLocale::Spanish:
        return es;
    case QLocale::French:
        return fr;
    case QLocale::German:
        return de;
    default:
        return en;
    }
}

Checked<std::vector<Term>> readTerms(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    std::vector<Term> terms;
    StrictObject root(*object, {}, faults);
    for (const auto& [path, item] : root.objects(u"terms"_s)) {
        StrictObject one(item, path, faults);
        Term term = readTerm(one);
        if (std::ranges::find(terms, term.id, &Term::id) != terms.end())
            one.fault(u"id"_s, term.id, FaultKind::Conflicts, {u"id"_s, term.id});
        terms.push_back(std::move(term));
    }
    root.finish();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return terms;
}

const std::vector<Term>& builtInTerms()
{
    static const std::vector<Term> terms = builtIn(u"termbase/terms.json"_s, readTerms);
    return terms;
}

} // namespace strandbench
