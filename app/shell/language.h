// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTranslator>

namespace strandbench {

/// The application's language: one catalogue installed at a time. English has one too, for its plurals.
class Language {
public:
    Language() = default;
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
    ~Language();

    /// Installs a language's catalogue (ISO 639-1). False when the program carries none: English text stays.
    bool speak(const QString& language);

private:
    QTranslator m_translator;
};

} // namespace strandbench
