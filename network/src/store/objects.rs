//! Files of a store under any place that an object store reaches, a folder by default: put
//! whole, put only where none is, get, list, delete.

use std::path::Path as FilePath;
use std::sync::Arc;

use datafusion::object_store::local::LocalFileSystem;
use datafusion::object_store::path::Path;
use datafusion::object_store::{Error, ObjectStore, ObjectStoreExt, PutMode, PutOptions};
use drawwell_core::private_file;
use tokio::runtime::Runtime;

use crate::trouble::Stop;

/// The files of a store.
#[derive(Debug, Clone)]
pub struct Objects {
    inner: Arc<dyn ObjectStore>,
    runtime: Arc<Runtime>,
}

impl Objects {
    /// Those in a folder, which is made where it is not there.
    ///
    /// # Errors
    /// Where the folder can't be made.
    pub fn in_folder(folder: &FilePath) -> Result<Self, Stop> {
        private_file::create_folder(folder).map_err(|why| Stop::file(folder, why))?;
        Self::over(Arc::new(LocalFileSystem::new_with_prefix(folder)?))
    }

    /// Those that an object store reaches.
    ///
    /// # Errors
    /// Where no thread can be had.
    pub fn over(inner: Arc<dyn ObjectStore>) -> Result<Self, Stop> {
        let runtime = tokio::runtime::Builder::new_multi_thread()
            .enable_all()
            .build()
            .map_err(|why| Stop::refused(format!("no threads: {why}")))?;
        Ok(Self { inner, runtime: Arc::new(runtime) })
    }

    /// What runs queries.
    pub fn runtime(&self) -> &Runtime {
        &self.runtime
    }

    /// The object store itself.
    pub fn inner(&self) -> Arc<dyn ObjectStore> {
        Arc::clone(&self.inner)
    }

    /// A file, whole; none where there is none.
    ///
    /// # Errors
    /// Where it can't be read.
    pub fn get(&self, path: &str) -> Result<Option<Vec<u8>>, Stop> {
        let at = Path::from(path);
        self.runtime.block_on(async {
            match self.inner.get(&at).await {
                Ok(found) => Ok(Some(found.bytes().await?.to_vec())),
                Err(Error::NotFound { .. }) => Ok(None),
                Err(why) => Err(why.into()),
            }
        })
    }

    /// Puts a file, whole or not at all.
    ///
    /// # Errors
    /// Where it can't be written.
    pub fn put(&self, path: &str, bytes: Vec<u8>) -> Result<(), Stop> {
        self.runtime.block_on(async { self.inner.put(&Path::from(path), bytes.into()).await })?;
        Ok(())
    }

    /// Puts a file where none is; says whether it did.
    ///
    /// # Errors
    /// Where it can't be written.
    pub fn put_new(&self, path: &str, bytes: Vec<u8>) -> Result<bool, Stop> {
        let only_new = PutOptions { mode: PutMode::Create, ..PutOptions::default() };
        match self.runtime.block_on(async { self.inner.put_opts(&Path::from(path), bytes.into(), only_new).await }) {
            Ok(_) => Ok(true),
            Err(Error::AlreadyExists { .. }) => Ok(false),
            Err(why) => Err(why.into()),
        }
    }

    /// The files in a folder and below it, in order.
    ///
    /// # Errors
    /// Where they can't be listed.
    pub fn list(&self, folder: &str) -> Result<Vec<String>, Stop> {
        use futures::TryStreamExt;
        let at = Path::from(folder);
        let all: Vec<_> = self.runtime.block_on(async { self.inner.list(Some(&at)).try_collect().await })?;
        let mut names: Vec<String> = all.into_iter().map(|found| found.location.to_string()).collect();
        names.sort();
        Ok(names)
    }

    /// Deletes a file; one that is gone already is well.
    ///
    /// # Errors
    /// Where it can't be deleted.
    pub fn delete(&self, path: &str) -> Result<(), Stop> {
        match self.runtime.block_on(async { self.inner.delete(&Path::from(path)).await }) {
            Ok(()) | Err(Error::NotFound { .. }) => Ok(()),
            Err(why) => Err(why.into()),
        }
    }
}
