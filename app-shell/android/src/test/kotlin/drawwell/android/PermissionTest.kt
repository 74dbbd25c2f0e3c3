package drawwell.android

import android.Manifest
import android.content.pm.ApplicationInfo
import android.content.pm.PackageManager
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** What the phone is asked for, and what is done where it says no. */
@RunWith(RobolectricTestRunner::class)
class PermissionTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    @Test
    fun fourThingsAreAskedForAndTheInternetIsNotAmongThem() {
        val asked = phone.app.packageManager.getPackageInfo(phone.app.packageName, PackageManager.GET_PERMISSIONS)
        assertEquals(
            setOf(
                Manifest.permission.POST_NOTIFICATIONS,
                Manifest.permission.SCHEDULE_EXACT_ALARM,
                Manifest.permission.RECEIVE_BOOT_COMPLETED,
                Manifest.permission.VIBRATE,
            ),
            asked.requestedPermissions?.toSet(),
        )
    }

    @Test
    fun theRecordIsNotBackedUp() {
        assertEquals(0, phone.app.applicationInfo.flags and ApplicationInfo.FLAG_ALLOW_BACKUP)
    }

    @Test
    fun whereNotificationsAreRefusedTheAlarmIsHeldAndTonightSaysSo() {
        phone.notifications.setNotificationsEnabled(false)
        phone.begin()
        phone.tap("start")
        phone.activity {
            val request = shadowOf(it).lastRequestedPermission
            assertEquals(listOf(Manifest.permission.POST_NOTIFICATIONS), request.requestedPermissions.toList())
            it.onRequestPermissionsResult(request.requestCode, request.requestedPermissions, intArrayOf(PackageManager.PERMISSION_DENIED))
        }
        assertEquals(phone.asked()?.unixMilliseconds, phone.alarms.scheduledAlarms.single().triggerAtMs)
        phone.again()
        phone.activity { assertNull(shadowOf(it).lastRequestedPermission) }
        assertTrue("alarms-not-shown" in phone.asksTonight())
        phone.notifications.setNotificationsEnabled(true)
        phone.again()
        assertFalse("alarms-not-shown" in phone.asksTonight())
    }

    @Test
    fun whatNobodyWasAskedForYetIsNotSaidToBeRefused() {
        phone.notifications.setNotificationsEnabled(false)
        phone.begin()
        assertFalse("alarms-not-shown" in phone.asksTonight())
    }
}
