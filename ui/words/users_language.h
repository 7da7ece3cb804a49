#pragma once

class QCoreApplication;

namespace coutil {

// Makes the window and the command line speak the language of the user's settings (QLocale, so
// LANGUAGE, LC_ALL, LC_MESSAGES, LANG; LC_ALL=C is English), Qt's own words too. Where we have no
// translation all is English, with the plural forms of coutil_en. The translations live as long as
// `app`.
void speakUsersLanguage(QCoreApplication& app);

}  // namespace coutil
