// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/pseudo_language.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::rules {
namespace {

constexpr double longer = 0.3;
constexpr int mostInAWord = 2; ///< letters that a word of several grows by
constexpr std::size_t shortest = 3;

/// What stays as it is: figures to be put in, tags, keyboard keys.
const QRegularExpression& kept()
{
    static const QRegularExpression all(u"%(?:L?\\d{1,2}|L?n)|</?\\w+[^>]*>|&(?=\\w)"_s);
    return all;
}

QChar accented(QChar letter)
{
    static const QString plain = u"aeiouyclnrstzAEIOUYCLNRSTZ"_s;
    static const QString with = u"áéîöüýçłñřšťžÁÉÎÖÜÝÇŁÑŘŠŤŽ"_s;
    const auto at = plain.indexOf(letter);
    return at < 0 ? letter : with.at(at);
}

bool vowel(QChar letter) { return u"áéîöüýÁÉÎÖÜÝ"_s.contains(letter); }

/// A text in pieces: words, and what stands between them or stays as it is.
struct Piece {
    QString text;
    bool word = false;
};

std::vector<Piece> piecesOf(const QString& text)
{
    std::vector<Piece> pieces;
    const auto add = [&pieces](const QString& plain) {
        for (const QChar each : plain) {
            if (pieces.empty() || pieces.back().text.isEmpty() || pieces.back().word != each.isLetter())
                pieces.push_back({{}, each.isLetter()});
            pieces.back().text += each;
        }
    };
    qsizetype from = 0;
    for (auto found = kept().globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        add(text.mid(from, match.capturedStart() - from));
        pieces.push_back({match.captured(), false});
        pieces.push_back({{}, false});
        from = match.capturedEnd();
    }
    add(text.mid(from));
    return pieces;
}

/// Its vowels drawn out by so many letters in all; one without a vowel grows at its end.
QString grown(const QString& word, int by)
{
    QString out;
    int left = by;
    for (const QChar each : word) {
        out += each;
        if (left > 0 && vowel(each)) {
            const int here = std::min(left, 1 + by / 3);
            out += QString(here, each.toLower());
            left -= here;
        }
    }
    return out + QString(left, u'ñ');
}

} // namespace

QString pseudo(const QString& text)
{
    std::vector<Piece> pieces = piecesOf(text);
    const auto words = std::count_if(pieces.begin(), pieces.end(), [](const Piece& each) { return each.word; });
    static const std::array<QString, 4> between{u"ëñ"_s, u"döř"_s, u"ïš"_s, u"väł"_s};
    std::size_t turn = 0;
    double owed = 0;
    QString out;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        if (!piece.word) {
            owed += longer * double(piece.text.size()) * (words > 0 ? 1 : 0);
            out += piece.text;
            continue;
        }
        QString word = piece.text;
        std::transform(word.begin(), word.end(), word.begin(), accented);
        owed += longer * double(word.size());
        const int all = static_cast<int>(std::ceil(owed - 1e-9));
        const int here = words == 1 ? all : std::min(all, mostInAWord);
        out += grown(word, here);
        owed -= here;
        // Never inside what a hyphen or an apostrophe holds together, nor before a unit's brackets.
        const bool space = i + 1 < pieces.size() && pieces[i + 1].text.startsWith(u' ');
        if (space && owed >= shortest) {
            out += u' ' + between[turn % between.size()];
            owed -= double(between[turn % between.size()].size() + 1);
            ++turn;
        }
    }
    return out;
}

PseudoLanguage::PseudoLanguage() { (void)m_english.load(u":/i18n/strandbench_en.qm"_s); }

QString PseudoLanguage::translate(const char* context, const char* source, const char* disambiguation, int n) const
{
    // What the libraries themselves say (buttons of their dialogues, names of keys) is not ours to lengthen.
    if (QByteArrayView(context).startsWith("Q"))
        return {};
    const QString plural = n < 0 ? QString() : m_english.translate(context, source, disambiguation, n);
    return pseudo(plural.isEmpty() ? QString::fromUtf8(source) : plural);
}

} // namespace strandbench::rules
