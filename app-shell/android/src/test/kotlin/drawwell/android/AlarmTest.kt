package drawwell.android

import android.app.AlarmManager
import android.app.Notification
import android.app.NotificationManager
import android.content.Intent
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import drawwell.surface.Effect
import org.junit.After
import org.junit.Assert.assertFalse
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
    fun whereExactOnesAreRefusedItIsHeldRoughlyAndTonightSaysSoUntilTheyAreAllowed() {
        allowed()
        ShadowAlarmManager.setCanScheduleExactAlarms(false)
        running()
        assertEquals(phone.asked()?.unixMilliseconds, held().triggerAtMs)
        assertTrue(held().windowLengthMs != EXACT)
        assertTrue(INEXACT in phone.asksTonight())
        ShadowAlarmManager.setCanScheduleExactAlarms(true)
        phone.again()
        assertFalse(INEXACT in phone.asksTonight())
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
    fun theChannelsHaveNamesAndTheQuietOneNeitherSoundsNorShakes() {
        val channels = phone.app.getSystemService(NotificationManager::class.java)
        val loud = channels.getNotificationChannel(Notifications.CHANNEL)
        assertEquals(phone.app.getString(R.string.channel_name), loud.name)
        assertEquals(NotificationManager.IMPORTANCE_HIGH, loud.importance)
        val quiet = channels.getNotificationChannel(Notifications.QUIET)
        assertEquals(phone.app.getString(R.string.channel_quiet_name), quiet.name)
        assertEquals(NotificationManager.IMPORTANCE_LOW, quiet.importance)
        assertNull(quiet.sound)
        assertFalse(quiet.shouldVibrate())
    }

    @Test
    fun aLaterOneOfASlotTakesThePlaceOfTheEarlierAndIsHeardToo() {
        val notifications = Notifications(phone.app)
        notifications.show(alarm("set-up", quiet = true))
        notifications.show(alarm("due"))
        notifications.show(alarm("session", slot = "session-running"))
        assertEquals(listOf("due", "session"), said())
        val due = phone.notifications.allNotifications.first()
        assertEquals(Notifications.CHANNEL, due.channelId)
        assertEquals(0, due.flags and Notification.FLAG_ONLY_ALERT_ONCE)
        notifications.takeBack("set-up")
        assertEquals("what took its place stays", listOf("due", "session"), said())
        notifications.takeBack("due")
        assertEquals(listOf("session"), said())
    }

    @Test
    fun aQuietOneIsShownOnTheQuietChannel() {
        Notifications(phone.app).show(alarm("due", quiet = true))
        assertEquals(Notifications.QUIET, phone.notifications.allNotifications.single().channelId)
    }

    @Test
    fun afterOneRangTheNextIsHeldThoughNobodyOpensTheApp() {
        phone.begin()
        phone.plans()
        val first = phone.alarms.scheduledAlarms.minBy { it.triggerAtMs }
        val before = phone.alarms.scheduledAlarms.map { it.triggerAtMs }.toSet()
        phone.passTo(first.triggerAtMs)
        phone.scenario.close()
        phone.processDies()
        rings(first)
        assertEquals(1, said().size)
        val asked = phone.reminders().map { it.unixMilliseconds }.toSet()
        assertEquals(asked, phone.alarms.scheduledAlarms.map { it.triggerAtMs }.toSet())
        assertTrue("nothing was asked anew", asked.isNotEmpty() && first.triggerAtMs !in asked)
        assertTrue("$before", asked.all { it > first.triggerAtMs })
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

    private fun alarm(key: String, quiet: Boolean = false, slot: String = "tonight") =
        Effect.SetAlarm(key, slot, 1, key, "", quiet)

    /** The titles that are seen. */
    private fun said() = phone.notifications.allNotifications.map { it.extras.getString(Notification.EXTRA_TITLE) }

    private fun rings(alarm: ShadowAlarmManager.ScheduledAlarm) {
        ShadowAlarmManager.setAutoSchedule(false)
        phone.alarms.fireAlarm(alarm)
        shadowOf(android.os.Looper.getMainLooper()).idle()
    }

    private companion object {
        /** AlarmManager.WINDOW_EXACT, which is hidden. */
        const val EXACT = 0L
        const val INEXACT = "alarms-inexact"
    }
}
