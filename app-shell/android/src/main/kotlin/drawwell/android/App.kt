package drawwell.android

import android.app.Application
import android.content.res.Configuration
import android.system.Os

/** The process: what outlives every activity. */
class App : Application() {
    /** Made anew with each process; a test may do the same without one. */
    internal lateinit var home: Home

    override fun onCreate() {
        super.onCreate()
        // A phone has no folder for temporary files but the app's own.
        Os.setenv("TMPDIR", cacheDir.path, true)
        // What a crash left of a file that came in.
        Received(this).empty()
        home = Home(this)
        Notifications(this).makeChannels()
    }

    override fun onConfigurationChanged(to: Configuration) {
        super.onConfigurationChanged(to)
        home.lookAtLanguage()
    }
}
