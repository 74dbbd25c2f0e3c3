package drawwell.android

import android.Manifest
import android.content.Context
import android.content.pm.PackageManager
import android.os.Build

/** From Android 13 on the person is asked whether the app may notify, and by us only once. */
internal class LeaveToNotify(private val context: Context) {
    private val asked = context.getSharedPreferences("asked", Context.MODE_PRIVATE)

    /** Whether the person can still be asked. */
    fun isOpen(): Boolean = Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU &&
        context.checkSelfPermission(WANTED) != PackageManager.PERMISSION_GRANTED && !asked.getBoolean(WANTED, false)

    fun isAskedFor() = asked.edit().putBoolean(WANTED, true).apply()

    companion object {
        const val WANTED = Manifest.permission.POST_NOTIFICATIONS
    }
}
