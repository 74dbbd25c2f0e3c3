package drawwell.android

import android.security.keystore.KeyGenParameterSpec
import android.security.keystore.KeyProperties
import drawwell.surface.isSealed
import drawwell.surface.newKey
import java.io.File
import java.io.FileOutputStream
import java.security.GeneralSecurityException
import java.security.KeyStore
import java.util.Locale
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

/** The record's key in a file, wrapped by a key that never leaves the phone's Keystore. */
internal class WrappedKey(private val file: File) {
    /**
     * The key of a record; for one that is not sealed a new one, once it was kept and given back. None where the
     * Keystore refuses: then a sealed record stays closed and says so, and another is not sealed.
     */
    fun keyFor(record: String): ByteArray? = when {
        file.exists() -> kept()
        isSealed(record) -> null
        else -> newKey(Locale.getDefault().language).takeIf(::keep)
    }

    /** Keeps a key, and looks that it is kept. */
    fun keep(key: ByteArray): Boolean = orNull {
        val cipher = Cipher.getInstance(HOW).apply { init(Cipher.ENCRYPT_MODE, wrapping()) }
        val half = file.resolveSibling("${file.name}.half")
        // On the disk before anything is sealed with it: what was sealed is lost with its key.
        FileOutputStream(half).use {
            it.write(cipher.iv + cipher.doFinal(key))
            it.fd.sync()
        }
        half.renameTo(file) && kept().contentEquals(key)
    } ?: false

    private fun kept(): ByteArray? = orNull {
        val bytes = file.readBytes()
        val cipher = Cipher.getInstance(HOW)
        cipher.init(Cipher.DECRYPT_MODE, wrapping(), GCMParameterSpec(TAG_BITS, bytes, 0, IV_BYTES))
        cipher.doFinal(bytes, IV_BYTES, bytes.size - IV_BYTES)
    }

    private fun wrapping(): SecretKey {
        val store = KeyStore.getInstance(STORE).apply { load(null) }
        (store.getKey(NAME, null) as? SecretKey)?.let { return it }
        val wanted = KeyGenParameterSpec.Builder(NAME, KeyProperties.PURPOSE_ENCRYPT or KeyProperties.PURPOSE_DECRYPT)
            .setBlockModes(KeyProperties.BLOCK_MODE_GCM)
            .setEncryptionPaddings(KeyProperties.ENCRYPTION_PADDING_NONE)
            .setKeySize(KEY_BITS)
            .build()
        return KeyGenerator.getInstance(KeyProperties.KEY_ALGORITHM_AES, STORE).apply { init(wanted) }.generateKey()
    }

    private fun <T> orNull(deed: () -> T): T? = try {
        deed()
    } catch (_: GeneralSecurityException) {
        null
    } catch (_: java.io.IOException) {
        null
    } catch (_: RuntimeException) {
        // A Keystore that has lost its key says so in many ways.
        null
    }

    private companion object {
        const val STORE = "AndroidKeyStore"
        const val NAME = "drawwell-record"
        const val HOW = "AES/GCM/NoPadding"
        const val KEY_BITS = 256
        const val TAG_BITS = 128
        const val IV_BYTES = 12
    }
}
