// SPDX-License-Identifier: GPL-3.0-or-later
#include "roles/pin_hash.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <stdexcept>

namespace strandbench {
namespace {

/// Once a process; it may be called again.
void begin()
{
    if (sodium_init() < 0)
        throw std::runtime_error("libsodium cannot begin");
}

/// A PIN's bytes, wiped when they are no longer needed.
class Secret {
public:
    explicit Secret(const QString& pin) : m_bytes(pin.toUtf8()) {}
    ~Secret() { sodium_memzero(m_bytes.data(), static_cast<std::size_t>(m_bytes.size())); }
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    [[nodiscard]] const char* data() const { return m_bytes.constData(); }
    [[nodiscard]] unsigned long long size() const { return static_cast<unsigned long long>(m_bytes.size()); }

private:
    QByteArray m_bytes;
};

/// As libsodium reads it: of a fixed length, with zeros after it.
using HashText = std::array<char, crypto_pwhash_STRBYTES>;
HashText textOf(const QByteArray& hash)
{
    HashText text{};
    std::memcpy(text.data(), hash.constData(), std::min(text.size() - 1, static_cast<std::size_t>(hash.size())));
    return text;
}

} // namespace

QByteArray hashOf(const QString& pin, const PinCost& cost)
{
    begin();
    const Secret secret(pin);
    QByteArray hash(crypto_pwhash_STRBYTES, '\0');
    if (crypto_pwhash_str_alg(hash.data(), secret.data(), secret.size(), cost.passes, cost.memoryBytes,
                              crypto_pwhash_ALG_ARGON2ID13) != 0)
        return {};
    return hash.left(static_cast<qsizetype>(qstrlen(hash.constData())));
}

bool isHash(const QByteArray& hash)
{
    begin();
    // Which cost is asked for does not matter: it is -1 only of what does not read.
    return hash.startsWith(crypto_pwhash_argon2id_STRPREFIX) && hash.size() < qsizetype(crypto_pwhash_STRBYTES) &&
           crypto_pwhash_str_needs_rehash(textOf(hash).data(), crypto_pwhash_OPSLIMIT_MIN,
                                          crypto_pwhash_MEMLIMIT_MIN) >= 0;
}

bool matches(const QByteArray& hash, const QString& pin)
{
    begin();
    const Secret secret(pin);
    return crypto_pwhash_str_verify(textOf(hash).data(), secret.data(), secret.size()) == 0;
}

} // namespace strandbench
