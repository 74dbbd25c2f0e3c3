package drawwell.android

import android.app.AlarmManager
import android.app.Notification
import android.app.NotificationManager
import android.content.Intent
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import org.junit.After
import org.junit.Before
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowAlarmManager
import java.util.TimeZone

/** What rings is what the core asked for, at its instant and in its words. */
@RunWith(RobolectricTestRunner::class)
class AlarmTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }
    private val zone = TimeZone.getDefault()

    @Before
    fun granted() = ShadowAlarmManager.setCanScheduleExactAlarms(true)

    @After
    fun asItWas() = TimeZone.setDefault(zone)

    private fun allowed() = shadowOf(phone.app).grantPermissions(android.Manifest.permission.POST_NOTIFICATIONS)

    private fun running() {
        phone.begin()
        phone.tap("start")
    }

    private fun held() = phone.alarms.scheduledAlarms.single()

    @Test
    fun theAlarmOfARunningSessionIsHeldForTheInstantOfTheCore() {
        running()
        val asked = checkNotNull(phone.asked())
        assertEquals(asked.unixMilliseconds, held().triggerAtMs)
        assertEquals(AlarmManager.RTC_WAKEUP, held().type)
        assertTrue(held().isAllowWhileIdle)
        assertEquals(EXACT, held().windowLengthMs)
    }

    @Test
    fun whereExactOnesAreRefusedItIsHeldRoughlyAndThatIsSaidOnce() {
        allowed()
        ShadowAlarmManager.setCanScheduleExactAlarms(false)
        running()
        assertEquals(phone.asked()?.unixMilliseconds, held().triggerAtMs)
        assertTrue(held().windowLengthMs != EXACT)
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertEquals(phone.app.getString(R.string.alarms_inexact), phone.conversation.trouble?.what)
        phone.tap("dismiss-trouble")
        phone.tap("mark-letdown")
        phone.tap("undo")
        phone.again()
        assertNull(phone.conversation.trouble)
    }

    @Test
    fun whenItEndsNothingIsHeld() {
        running()
        phone.pass(600)
        phone.tap("finish")
        assertNull(phone.asked())
        assertTrue(phone.alarms.scheduledAlarms.isEmpty())
    }

    @Test
    fun itRingsInTheWordsOfTheCoreAndOnlyOnce() {
        running()
        val asked = checkNotNull(phone.asked())
        phone.pass(4 * 3600)
        ShadowAlarmManager.setAutoSchedule(false)
        phone.alarms.fireAlarm(held())
        shadowOf(android.os.Looper.getMainLooper()).idle()
        val said = phone.notifications.allNotifications.single()
        assertEquals(asked.title, said.extras.getString(Notification.EXTRA_TITLE))
        assertEquals(asked.text, said.extras.getString(Notification.EXTRA_TEXT))
        assertEquals(Notifications.CHANNEL, said.channelId)
        assertEquals(MainActivity::class.java.name, shadowOf(said.contentIntent).savedIntent.component?.className)
        phone.again()
        assertTrue(phone.alarms.scheduledAlarms.isEmpty())
        phone.tap("finish")
        assertTrue(phone.notifications.allNotifications.isEmpty())
    }

    @Test
    fun theChannelHasAName() {
        val channel = phone.app.getSystemService(NotificationManager::class.java).getNotificationChannel(Notifications.CHANNEL)
        assertEquals(phone.app.getString(R.string.channel_name), channel.name)
        assertEquals(NotificationManager.IMPORTANCE_HIGH, channel.importance)
    }

    @Test
    fun whatTheSystemForgetsIsSetAnew() {
        listOf(
            Intent.ACTION_BOOT_COMPLETED,
            Intent.ACTION_TIME_CHANGED,
            Intent.ACTION_TIMEZONE_CHANGED,
            Intent.ACTION_MY_PACKAGE_REPLACED,
            AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED,
        ).forEachIndexed { index, action ->
            if (index == 0) running()
            phone.app.getSystemService(AlarmManager::class.java).cancel(checkNotNull(held().operation))
            assertTrue(phone.alarms.scheduledAlarms.isEmpty())
            phone.processDies()
            phone.app.sendBroadcast(Intent(action))
            shadowOf(android.os.Looper.getMainLooper()).idle()
            assertEquals(action, phone.asked()?.unixMilliseconds, held().triggerAtMs)
        }
    }

    @Test
    fun inAnotherZoneItIsTheSameInstant() {
        running()
        val before = held().triggerAtMs
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"))
        phone.app.sendBroadcast(Intent(Intent.ACTION_TIMEZONE_CHANGED))
        shadowOf(android.os.Looper.getMainLooper()).idle()
        assertEquals("Pacific/Auckland", phone.app.home.records.own().now().zone)
        assertEquals(before, held().triggerAtMs)
        assertNotNull(phone.asked())
    }

    @Test
    fun withoutASessionNothingIsSetAnew() {
        phone.begin()
        phone.app.sendBroadcast(Intent(Intent.ACTION_BOOT_COMPLETED))
        shadowOf(android.os.Looper.getMainLooper()).idle()
        assertTrue(phone.alarms.scheduledAlarms.isEmpty())
    }

    private companion object {
        /** AlarmManager.WINDOW_EXACT, which is hidden. */
        const val EXACT = 0L
    }
}
