// The languages that the program speaks. English is the language of the source; the others are translations of it.
// What is written into files (plans, JSON, CSV) hangs on none of them.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <vector>

#include "app/words/numbers.hpp"

namespace loam::words {

struct Language {
    QString code; // ISO 639-1, as translations are named
    QString name; // as its own speakers write it
};

const std::vector<Language>& languages(); // English first

bool is_language(const QString& code);

// The first of the reader's languages that the program speaks, English where it speaks none of them. As the operating
// system names them, most wanted first: "de-AT", "es_MX", "fr".
QString best_language(const QStringList& wanted);

// How numbers and dates are written in a language: by the reader's own region where they speak it there.
QLocale locale_for(const QString& code, const QLocale& region);

// Makes the running program speak it, replacing the language before, together with Qt's own words and the locale that
// widgets go by. Call it before anything is shown: what is already on the screen stays as it is. An unknown code is
// English.
void speak(const QString& code, const QLocale& region = QLocale::system());

// Figures for a reader of the language wherever the program runs: English as Formatter has it, another with the marks
// of its own numbers.
Formatter formatter_in(const QString& code, UnitSystem units);

} // namespace loam::words
